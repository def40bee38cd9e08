"""Made from openapi/v1.json by scripts/generate.py. Never edit it by hand."""

from __future__ import annotations

from typing import Any, Union, overload

from . import schema

Unit = Union[
    schema.AreaUnit,
    schema.BulkDensityUnit,
    schema.CountPerAreaUnit,
    schema.CountPerLengthUnit,
    schema.CountPerMassUnit,
    schema.LengthUnit,
    schema.MassPerAreaUnit,
    schema.MassPerRevolutionUnit,
    schema.MassPerThousandUnit,
    schema.MassPerTimeUnit,
    schema.MassUnit,
    schema.PressureUnit,
    schema.PulsesPerDistanceUnit,
    schema.PulsesPerRevolutionUnit,
    schema.RatioUnit,
    schema.RevolutionsUnit,
    schema.RotationUnit,
    schema.SpeedUnit,
    schema.TemperatureUnit,
    schema.TimeUnit,
    schema.VolumePerTimeUnit,
    schema.VolumeUnit,
]
"""Every unit that can be sent."""


@overload
def quantity(value: float, unit: schema.AreaUnit) -> schema.AreaQuantity: ...
@overload
def quantity(value: float, unit: schema.BulkDensityUnit) -> schema.BulkDensityQuantity: ...
@overload
def quantity(value: float, unit: schema.CountPerAreaUnit) -> schema.CountPerAreaQuantity: ...
@overload
def quantity(value: float, unit: schema.CountPerLengthUnit) -> schema.CountPerLengthQuantity: ...
@overload
def quantity(value: float, unit: schema.CountPerMassUnit) -> schema.CountPerMassQuantity: ...
@overload
def quantity(value: float, unit: schema.LengthUnit) -> schema.LengthQuantity: ...
@overload
def quantity(value: float, unit: schema.MassPerAreaUnit) -> schema.MassPerAreaQuantity: ...
@overload
def quantity(value: float, unit: schema.MassPerRevolutionUnit) -> schema.MassPerRevolutionQuantity: ...
@overload
def quantity(value: float, unit: schema.MassPerThousandUnit) -> schema.MassPerThousandQuantity: ...
@overload
def quantity(value: float, unit: schema.MassPerTimeUnit) -> schema.MassPerTimeQuantity: ...
@overload
def quantity(value: float, unit: schema.MassUnit) -> schema.MassQuantity: ...
@overload
def quantity(value: float, unit: schema.PressureUnit) -> schema.PressureQuantity: ...
@overload
def quantity(value: float, unit: schema.PulsesPerDistanceUnit) -> schema.PulsesPerDistanceQuantity: ...
@overload
def quantity(value: float, unit: schema.PulsesPerRevolutionUnit) -> schema.PulsesPerRevolutionQuantity: ...
@overload
def quantity(value: float, unit: schema.RatioUnit) -> schema.RatioQuantity: ...
@overload
def quantity(value: float, unit: schema.RevolutionsUnit) -> schema.RevolutionsQuantity: ...
@overload
def quantity(value: float, unit: schema.RotationUnit) -> schema.RotationQuantity: ...
@overload
def quantity(value: float, unit: schema.SpeedUnit) -> schema.SpeedQuantity: ...
@overload
def quantity(value: float, unit: schema.TemperatureUnit) -> schema.TemperatureQuantity: ...
@overload
def quantity(value: float, unit: schema.TimeUnit) -> schema.TimeQuantity: ...
@overload
def quantity(value: float, unit: schema.VolumePerTimeUnit) -> schema.VolumePerTimeQuantity: ...
@overload
def quantity(value: float, unit: schema.VolumeUnit) -> schema.VolumeQuantity: ...
def quantity(value: float, unit: str) -> Any:
    """A quantity, for example `quantity(68, "kg/ha")`, the same as `{"value": 68, "unit": "kg/ha"}`.

    A type checker refuses a unit that does not exist, and a quantity where the contract asks for another one.
    """
    return {"value": value, "unit": unit}
