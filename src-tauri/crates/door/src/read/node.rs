//! A JSON value as a source for serde, with our own error type.

use super::fault::Fault;
use crate::error::ErrorCode;
use serde::de::value::StringDeserializer;
use serde::de::{
    DeserializeSeed, Deserializer, EnumAccess, IntoDeserializer, MapAccess, SeqAccess,
    VariantAccess, Visitor,
};
use serde::forward_to_deserialize_any;
use serde_json::{Map, Number, Value};

/// One value to be read.
pub(super) struct Node(pub(super) Value);

impl Node {
    /// Reads a number where a whole one is wanted: `5.0` is one, `5.5` is not.
    fn whole<'de, V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        /// 2 to the power of 63: from here on a float is beyond every whole type we read.
        const BEYOND: f64 = 9_223_372_036_854_775_808.0;
        match &self.0 {
            Value::Number(number) if !number.is_u64() && !number.is_i64() => {
                match number.as_f64() {
                    Some(value) if value.fract() != 0.0 => Err(Fault::here(ErrorCode::WrongType)),
                    Some(value) if value.abs() < BEYOND => {
                        #[expect(
                            clippy::cast_possible_truncation,
                            reason = "whole, and inside the range of i64"
                        )]
                        let whole = value as i64;
                        match u64::try_from(whole) {
                            Ok(count) => visitor.visit_u64(count),
                            Err(_) => visitor.visit_i64(whole),
                        }
                    }
                    _ => Err(Fault::here(ErrorCode::OutOfRange)),
                }
            }
            _ => self.deserialize_any(visitor),
        }
    }
}

fn visit_number<'de, V: Visitor<'de>>(number: &Number, visitor: V) -> Result<V::Value, Fault> {
    if let Some(count) = number.as_u64() {
        visitor.visit_u64(count)
    } else if let Some(whole) = number.as_i64() {
        visitor.visit_i64(whole)
    } else if let Some(value) = number.as_f64() {
        visitor.visit_f64(value)
    } else {
        Err(Fault::here(ErrorCode::OutOfRange))
    }
}

impl<'de> Deserializer<'de> for Node {
    type Error = Fault;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        match self.0 {
            Value::Null => visitor.visit_unit(),
            Value::Bool(value) => visitor.visit_bool(value),
            Value::Number(number) => visit_number(&number, visitor),
            Value::String(text) => visitor.visit_string(text),
            Value::Array(items) => {
                let mut items = Items {
                    left: items.into_iter(),
                    place: 0,
                };
                let value = visitor.visit_seq(&mut items)?;
                if items.left.len() == 0 {
                    Ok(value)
                } else {
                    Err(Fault::here(ErrorCode::WrongType))
                }
            }
            Value::Object(object) => visitor.visit_map(Entries {
                left: object.into_iter(),
                open: None,
            }),
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        match self.0 {
            Value::Null => visitor.visit_none(),
            _ => visitor.visit_some(self),
        }
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(
        self,
        _name: &'static str,
        visitor: V,
    ) -> Result<V::Value, Fault> {
        visitor.visit_newtype_struct(self)
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _name: &'static str,
        _variants: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Fault> {
        match self.0 {
            Value::String(name) => visitor.visit_enum(Choice {
                name,
                content: None,
            }),
            Value::Object(object) => visitor.visit_enum(Choice::of(object)?),
            _ => Err(Fault::here(ErrorCode::WrongType)),
        }
    }

    /// Only an object: a list of the fields in order would be taken too, and names nothing.
    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _name: &'static str,
        _fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Fault> {
        match self.0 {
            Value::Object(_) => self.deserialize_any(visitor),
            _ => Err(Fault::here(ErrorCode::WrongType)),
        }
    }

    fn deserialize_ignored_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        visitor.visit_unit()
    }

    fn deserialize_u8<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.whole(visitor)
    }

    fn deserialize_u16<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.whole(visitor)
    }

    fn deserialize_u32<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.whole(visitor)
    }

    fn deserialize_u64<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.whole(visitor)
    }

    fn deserialize_i8<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.whole(visitor)
    }

    fn deserialize_i16<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.whole(visitor)
    }

    fn deserialize_i32<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.whole(visitor)
    }

    fn deserialize_i64<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.whole(visitor)
    }

    forward_to_deserialize_any! {
        bool f32 f64 i128 u128 char str string bytes byte_buf unit unit_struct seq tuple tuple_struct
        map identifier
    }
}

/// The items of a list.
struct Items {
    left: std::vec::IntoIter<Value>,
    place: usize,
}

impl<'de> SeqAccess<'de> for &mut Items {
    type Error = Fault;

    fn next_element_seed<T: DeserializeSeed<'de>>(
        &mut self,
        seed: T,
    ) -> Result<Option<T::Value>, Fault> {
        let Some(item) = self.left.next() else {
            return Ok(None);
        };
        let place = self.place;
        self.place += 1;
        seed.deserialize(Node(item))
            .map(Some)
            .map_err(|fault| fault.inside_index(place))
    }

    fn size_hint(&self) -> Option<usize> {
        Some(self.left.len())
    }
}

/// The entries of an object.
struct Entries {
    left: serde_json::map::IntoIter,
    open: Option<(String, Value)>,
}

impl<'de> MapAccess<'de> for Entries {
    type Error = Fault;

    fn next_key_seed<K: DeserializeSeed<'de>>(
        &mut self,
        seed: K,
    ) -> Result<Option<K::Value>, Fault> {
        let Some((key, value)) = self.left.next() else {
            return Ok(None);
        };
        let name = key.clone();
        self.open = Some((key, value));
        seed.deserialize(name.into_deserializer()).map(Some)
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, Fault> {
        let (key, value) = self
            .open
            .take()
            .ok_or_else(|| Fault::here(ErrorCode::Internal))?;
        seed.deserialize(Node(value))
            .map_err(|fault| fault.inside_key(&key))
    }
}

/// One of several shapes: a word, or an object with one key.
struct Choice {
    name: String,
    content: Option<Value>,
}

impl Choice {
    fn of(object: Map<String, Value>) -> Result<Self, Fault> {
        let mut entries = object.into_iter();
        match (entries.next(), entries.next()) {
            (Some((name, content)), None) => Ok(Self {
                name,
                content: Some(content),
            }),
            _ => Err(Fault::here(ErrorCode::WrongType)),
        }
    }
}

impl<'de> EnumAccess<'de> for Choice {
    type Error = Fault;
    type Variant = Self;

    fn variant_seed<V: DeserializeSeed<'de>>(self, seed: V) -> Result<(V::Value, Self), Fault> {
        let name: StringDeserializer<Fault> = self.name.clone().into_deserializer();
        match seed.deserialize(name) {
            Ok(variant) => Ok((variant, self)),
            Err(fault) if self.content.is_some() => Err(fault.of_variant_key(&self.name)),
            Err(fault) => Err(fault),
        }
    }
}

impl<'de> VariantAccess<'de> for Choice {
    type Error = Fault;

    fn unit_variant(self) -> Result<(), Fault> {
        match self.content {
            None => Ok(()),
            Some(_) => Err(Fault::here(ErrorCode::WrongType).inside_key(&self.name)),
        }
    }

    fn newtype_variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Result<T::Value, Fault> {
        let content = self
            .content
            .ok_or_else(|| Fault::here(ErrorCode::WrongType))?;
        seed.deserialize(Node(content))
            .map_err(|fault| fault.inside_key(&self.name))
    }

    fn tuple_variant<V: Visitor<'de>>(self, _length: usize, visitor: V) -> Result<V::Value, Fault> {
        let content = self
            .content
            .ok_or_else(|| Fault::here(ErrorCode::WrongType))?;
        Node(content)
            .deserialize_any(visitor)
            .map_err(|fault| fault.inside_key(&self.name))
    }

    fn struct_variant<V: Visitor<'de>>(
        self,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Fault> {
        let content = self
            .content
            .ok_or_else(|| Fault::here(ErrorCode::WrongType))?;
        Node(content)
            .deserialize_struct("", fields, visitor)
            .map_err(|fault| fault.inside_key(&self.name))
    }
}
