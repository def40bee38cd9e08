from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .limit_source_answer import LimitSourceAnswer
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .printed_limit import PrintedLimit

@dataclass
class SeedRowLimitOfSource(AdditionalDataHolder, Parsable):
    """
    One limit against what lies with the seed.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # The number as the source prints it, in its own unit; absent without one.
    as_printed: Optional[MassPerAreaQuantity] = None
    # How the number was found: `published-cell` is printed for this geometry, the others take a stricter printed number. Absent without one. Known today: `published-cell`, `stricter-of-two-cells`, `widest-cell`.
    basis: Optional[str] = None
    # The printed numbers that it rests on.
    cells: Optional[list[PrintedLimit]] = None
    # Conditions as the source states them.
    conditions: Optional[str] = None
    # The limit, after the reduction that its source states for such a seedbed; absent without a number.
    limit: Optional[MassPerAreaQuantity] = None
    # The heaviest load of what it counts, over all zones.
    load: Optional[MassPerAreaQuantity] = None
    # Limit less load: negative is the excess; absent without a number.
    margin: Optional[MassPerAreaQuantity] = None
    # What the limit counts. `phosphate` is P2O5, `potash` K2O. Known today: `nitrogen`, `urea-nitrogen`, `urea-and-sulfate-nitrogen`, `nitrogen-beside-phosphates`, `phosphate`, `potash`, `nitrogen-plus-potash`, `sulfur`, `all-nutrients`.
    nutrient: Optional[str] = None
    # Why there is no number; absent with one.
    reason: Optional[str] = None
    # The publication.
    source: Optional[LimitSourceAnswer] = None
    # `within`: not above the limit. `above`: above it. `no-published-limit`: the source has no number for this case; the reason says why.
    verdict: Optional[str] = None
    # The zone with that load, counted from 1.
    zone: Optional[int] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SeedRowLimitOfSource:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SeedRowLimitOfSource
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SeedRowLimitOfSource()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .limit_source_answer import LimitSourceAnswer
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .printed_limit import PrintedLimit

        from .limit_source_answer import LimitSourceAnswer
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .printed_limit import PrintedLimit

        fields: dict[str, Callable[[Any], None]] = {
            "asPrinted": lambda n : setattr(self, 'as_printed', n.get_object_value(MassPerAreaQuantity)),
            "basis": lambda n : setattr(self, 'basis', n.get_str_value()),
            "cells": lambda n : setattr(self, 'cells', n.get_collection_of_object_values(PrintedLimit)),
            "conditions": lambda n : setattr(self, 'conditions', n.get_str_value()),
            "limit": lambda n : setattr(self, 'limit', n.get_object_value(MassPerAreaQuantity)),
            "load": lambda n : setattr(self, 'load', n.get_object_value(MassPerAreaQuantity)),
            "margin": lambda n : setattr(self, 'margin', n.get_object_value(MassPerAreaQuantity)),
            "nutrient": lambda n : setattr(self, 'nutrient', n.get_str_value()),
            "reason": lambda n : setattr(self, 'reason', n.get_str_value()),
            "source": lambda n : setattr(self, 'source', n.get_object_value(LimitSourceAnswer)),
            "verdict": lambda n : setattr(self, 'verdict', n.get_str_value()),
            "zone": lambda n : setattr(self, 'zone', n.get_int_value()),
        }
        return fields
    
    def serialize(self,writer: SerializationWriter) -> None:
        """
        Serializes information the current object
        param writer: Serialization writer to use to serialize this model
        Returns: None
        """
        if writer is None:
            raise TypeError("writer cannot be null.")
        writer.write_object_value("asPrinted", self.as_printed)
        writer.write_str_value("basis", self.basis)
        writer.write_collection_of_object_values("cells", self.cells)
        writer.write_str_value("conditions", self.conditions)
        writer.write_object_value("limit", self.limit)
        writer.write_object_value("load", self.load)
        writer.write_object_value("margin", self.margin)
        writer.write_str_value("nutrient", self.nutrient)
        writer.write_str_value("reason", self.reason)
        writer.write_object_value("source", self.source)
        writer.write_str_value("verdict", self.verdict)
        writer.write_int_value("zone", self.zone)
        writer.write_additional_data_value(self.additional_data)
    

