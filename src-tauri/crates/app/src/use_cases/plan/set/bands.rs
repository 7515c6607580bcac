//! From which number on pain counts as moderate and as strong.

use super::value::{count, fault, needed};
use crate::failure::Failure;
use door::ErrorCode;
use lifting::plan::PainBands;
use record::{Bands, Pain, Plan, Region};
use serde_json::Value;

/// Gives bands of their own to exactly these regions. Those that have some keep them; others begin as for everybody.
pub(super) fn set_regions(plan: &mut Plan, value: &Value) -> Result<(), Failure> {
    let list = value
        .as_array()
        .ok_or_else(|| fault(ErrorCode::WrongType))?;
    let regions = list.iter().map(region).collect::<Result<Vec<_>, _>>()?;
    let usual = PainBands::default();
    plan.bands.retain(|bands| regions.contains(&bands.region));
    for region in regions {
        let has = plan.bands.iter().any(|bands| bands.region == region);
        if let (false, Some(moderate_from), Some(severe_from)) = (
            has,
            Pain::new(usual.moderate_from.value()),
            Pain::new(usual.severe_from.value()),
        ) {
            plan.bands.push(Bands {
                region,
                moderate_from,
                severe_from,
            });
        }
    }
    plan.bands.sort_by_key(|bands| bands.region);
    Ok(())
}

/// Sets where one band begins, if `field` names one: `moderate_<region>` or `severe_<region>`.
pub(super) fn set_band(plan: &mut Plan, field: &str, value: &Value) -> Option<Result<(), Failure>> {
    let (which, region) = field.split_once('_')?;
    let part: fn(&mut Bands) -> &mut Pain = match which {
        "moderate" => |bands| &mut bands.moderate_from,
        "severe" => |bands| &mut bands.severe_from,
        _ => return None,
    };
    let region = Region::from_id(region)?;
    let bands = plan.bands.iter_mut().find(|bands| bands.region == region)?;
    Some(score(value).map(|from| *part(bands) = from))
}

/// A score at which a band can begin: no pain is never moderate.
fn score(value: &Value) -> Result<Pain, Failure> {
    let rating = needed(count(value, 1, u32::from(Pain::WORST))?)?;
    let pain = u8::try_from(rating).ok().and_then(Pain::new);
    pain.ok_or_else(|| fault(ErrorCode::OutOfRange))
}

fn region(value: &Value) -> Result<Region, Failure> {
    let id = value.as_str().ok_or_else(|| fault(ErrorCode::WrongType))?;
    Region::from_id(id).ok_or_else(|| fault(ErrorCode::NotAChoice))
}
