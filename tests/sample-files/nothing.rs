//! Nothing: this package only names others.
