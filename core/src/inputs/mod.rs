//! What is given and what is wrong with it: the one error type, the table of messages, quantities with their standard deviations, the one table of
//! fields with ranges, defaults and evidence, published figures, and the citations. Imports nothing above `numerics`.

pub mod error;
pub mod fields;
pub mod message;
pub mod published;
#[cfg(feature = "all")]
pub(crate) mod published_costs;
pub mod quantity;
pub mod sources;
