//! From a tree of JSON to structs, every mistake with its path.
//!
//! This reader stands here in place of a general path-tracking wrapper around the JSON parser because that one is
//! instantiated again for every struct and every way to reach it: a quarter of the whole wasm module.

use serde::de::value::StrDeserializer;
use serde::de::{
    self, DeserializeSeed, Deserializer, IntoDeserializer, MapAccess, SeqAccess, Unexpected,
    Visitor,
};
use serde::forward_to_deserialize_any;
use serde_json::Value;

use super::mistake::{Mistake, Step};

/// One node of the tree.
#[derive(Clone, Copy)]
pub(super) struct Node<'a> {
    /// What stands there.
    pub value: &'a Value,
    /// Columns that were handed over beside the text, where `{ "column": N }` stands for the Nth.
    pub columns: &'a [Vec<f64>],
}

impl<'de> Deserializer<'de> for Node<'de> {
    type Error = Mistake;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        match self.value {
            Value::Null => visitor.visit_unit(),
            Value::Bool(yes) => visitor.visit_bool(*yes),
            Value::Number(number) => match (number.as_u64(), number.as_i64()) {
                (Some(whole), _) => visitor.visit_u64(whole),
                (None, Some(whole)) => visitor.visit_i64(whole),
                (None, None) => visitor.visit_f64(number.as_f64().unwrap_or(f64::NAN)),
            },
            Value::String(text) => visitor.visit_borrowed_str(text),
            Value::Array(items) => visitor.visit_seq(Items {
                items: items.iter(),
                columns: self.columns,
                next: 0,
            }),
            Value::Object(fields) => visitor.visit_map(Fields {
                fields: fields.iter(),
                columns: self.columns,
                now: None,
            }),
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        if self.value.is_null() {
            visitor.visit_none()
        } else {
            visitor.visit_some(self)
        }
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Mistake> {
        match self.value {
            Value::String(text) => visitor
                .visit_enum::<StrDeserializer<'_, Mistake>>(text.as_str().into_deserializer()),
            _ => Err(self.unexpected(&visitor)),
        }
    }

    // The types that requests are made of ask for one kind of value each, so that no code is made for the others.

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Mistake> {
        match self.value {
            Value::Object(fields) => visitor.visit_map(Fields {
                fields: fields.iter(),
                columns: self.columns,
                now: None,
            }),
            _ => Err(self.unexpected(&visitor)),
        }
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        match self.value {
            Value::Array(items) => visitor.visit_seq(Items {
                items: items.iter(),
                columns: self.columns,
                next: 0,
            }),
            _ => match self.column() {
                Some(numbers) => visitor.visit_seq(Numbers(numbers.iter())),
                None => Err(self.unexpected(&visitor)),
            },
        }
    }

    fn deserialize_tuple<V: Visitor<'de>>(
        self,
        length: usize,
        visitor: V,
    ) -> Result<V::Value, Mistake> {
        match self.value {
            Value::Array(items) if items.len() != length => {
                Err(de::Error::invalid_length(items.len(), &visitor))
            }
            _ => self.deserialize_seq(visitor),
        }
    }

    fn deserialize_f64<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        match self.value.as_f64() {
            Some(number) => visitor.visit_f64(number),
            None => Err(self.unexpected(&visitor)),
        }
    }

    fn deserialize_u64<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        match self.value.as_u64() {
            Some(number) => visitor.visit_u64(number),
            None => Err(self.unexpected(&visitor)),
        }
    }

    fn deserialize_u32<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        self.deserialize_u64(visitor)
    }

    fn deserialize_string<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        match self.value {
            Value::String(text) => visitor.visit_borrowed_str(text),
            _ => Err(self.unexpected(&visitor)),
        }
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u128 f32 char str bytes byte_buf unit unit_struct
        newtype_struct tuple_struct map identifier ignored_any
    }
}

impl<'a> Node<'a> {
    /// The column that it stands for, if it does.
    fn column(self) -> Option<&'a [f64]> {
        let index = self.value.as_object()?.get("column")?.as_u64()?;
        let column = self.columns.get(usize::try_from(index).ok()?)?;
        Some(column)
    }

    fn unexpected(&self, wanted: &dyn de::Expected) -> Mistake {
        let found = match self.value {
            Value::Null => Unexpected::Unit,
            Value::Bool(yes) => Unexpected::Bool(*yes),
            Value::Number(number) => Unexpected::Float(number.as_f64().unwrap_or(f64::NAN)),
            Value::String(text) => Unexpected::Str(text),
            Value::Array(_) => Unexpected::Seq,
            Value::Object(_) => Unexpected::Map,
        };
        de::Error::invalid_type(found, wanted)
    }
}

struct Items<'a> {
    items: std::slice::Iter<'a, Value>,
    columns: &'a [Vec<f64>],
    next: usize,
}

impl<'de> SeqAccess<'de> for Items<'de> {
    type Error = Mistake;

    fn next_element_seed<T: DeserializeSeed<'de>>(
        &mut self,
        seed: T,
    ) -> Result<Option<T::Value>, Mistake> {
        let Some(item) = self.items.next() else {
            return Ok(None);
        };
        let at = self.next;
        self.next += 1;
        let node = Node {
            value: item,
            columns: self.columns,
        };
        seed.deserialize(node)
            .map(Some)
            .map_err(|mistake| mistake.under(Step::Item(at)))
    }
}

/// The numbers of a column.
struct Numbers<'a>(std::slice::Iter<'a, f64>);

impl<'de> SeqAccess<'de> for Numbers<'_> {
    type Error = Mistake;

    fn next_element_seed<T: DeserializeSeed<'de>>(
        &mut self,
        seed: T,
    ) -> Result<Option<T::Value>, Mistake> {
        let number = self.0.next();
        number
            .map(|number| seed.deserialize(Number(*number)))
            .transpose()
    }

    fn size_hint(&self) -> Option<usize> {
        Some(self.0.len())
    }
}

/// One number of a column, which may be left out wherever a value may.
struct Number(f64);

impl<'de> Deserializer<'de> for Number {
    type Error = Mistake;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        visitor.visit_f64(self.0)
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Mistake> {
        visitor.visit_some(self)
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf unit
        unit_struct newtype_struct seq tuple tuple_struct map struct enum identifier ignored_any
    }
}

struct Fields<'a> {
    fields: serde_json::map::Iter<'a>,
    columns: &'a [Vec<f64>],
    now: Option<(&'a String, &'a Value)>,
}

impl<'de> MapAccess<'de> for Fields<'de> {
    type Error = Mistake;

    #[inline(never)]
    fn next_key_seed<K: DeserializeSeed<'de>>(
        &mut self,
        seed: K,
    ) -> Result<Option<K::Value>, Mistake> {
        self.now = self.fields.next();
        let Some((name, _)) = self.now else {
            return Ok(None);
        };
        let key: StrDeserializer<'_, Mistake> = name.as_str().into_deserializer();
        seed.deserialize(key)
            .map(Some)
            .map_err(|mistake| mistake.under(Step::Field(name.clone())))
    }

    #[inline(never)]
    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, Mistake> {
        let (name, value) = self
            .now
            .ok_or_else(|| de::Error::custom("a field without a name"))?;
        let node = Node {
            value,
            columns: self.columns,
        };
        seed.deserialize(node)
            .map_err(|mistake| mistake.under(Step::Field(name.clone())))
    }
}
