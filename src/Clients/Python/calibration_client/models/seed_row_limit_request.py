from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .length_quantity import LengthQuantity
    from .local_limit_with_seed import LocalLimitWithSeed
    from .product_with_seed import ProductWithSeed
    from .seed_row_limit_request_crop import SeedRowLimitRequest_crop
    from .seed_row_limit_request_moisture import SeedRowLimitRequest_moisture
    from .seed_row_limit_request_opener import SeedRowLimitRequest_opener
    from .seed_row_limit_request_region import SeedRowLimitRequest_region
    from .seed_row_limit_request_soil import SeedRowLimitRequest_soil
    from .seed_row_limit_request_sources import SeedRowLimitRequest_sources

@dataclass
class SeedRowLimitRequest(Parsable):
    """
    What is placed with the seed, where and with which opener.
    """
    # The crop. A limit of one crop is never used for another; `other` gets no number.
    crop: Optional[SeedRowLimitRequest_crop] = None
    # Limits from your own guidance, for this very crop, soil, moisture and opener. They are judged beside the published ones.
    local_limits: Optional[list[LocalLimitWithSeed]] = None
    # Moisture of the seedbed: `good` is at or near field capacity and expected to stay so. In doubt, and in drying weather, it is `dry`.
    moisture: Optional[SeedRowLimitRequest_moisture] = None
    # The opener. A source rules one out on light soil, and pairs each with a usual spread.
    opener: Optional[SeedRowLimitRequest_opener] = None
    # Everything that goes into the seed row together; their sum counts.
    products: Optional[list[ProductWithSeed]] = None
    # Where the field lies. Without it limits of all regions are shown; `elsewhere` is any place without a word here.
    region: Optional[SeedRowLimitRequest_region] = None
    # Distance between rows. Range: above 0 and up to 5 m.
    row_spacing: Optional[LengthQuantity] = None
    # Texture of the soil: `light` is sandy loam or lighter, `medium` loam to clay loam, `heavy` clay to heavy clay. Take the lightest one of the field.
    soil: Optional[SeedRowLimitRequest_soil] = None
    # Keys of the sources to look at, as answers name them. Without it all are looked at.
    sources: Optional[list[SeedRowLimitRequest_sources]] = None
    # Width over which the opener spreads seed and fertilizer, measured in the field; at most the row spacing. Range: above 0 and up to 5 m.
    spread: Optional[LengthQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SeedRowLimitRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SeedRowLimitRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SeedRowLimitRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .length_quantity import LengthQuantity
        from .local_limit_with_seed import LocalLimitWithSeed
        from .product_with_seed import ProductWithSeed
        from .seed_row_limit_request_crop import SeedRowLimitRequest_crop
        from .seed_row_limit_request_moisture import SeedRowLimitRequest_moisture
        from .seed_row_limit_request_opener import SeedRowLimitRequest_opener
        from .seed_row_limit_request_region import SeedRowLimitRequest_region
        from .seed_row_limit_request_soil import SeedRowLimitRequest_soil
        from .seed_row_limit_request_sources import SeedRowLimitRequest_sources

        from .length_quantity import LengthQuantity
        from .local_limit_with_seed import LocalLimitWithSeed
        from .product_with_seed import ProductWithSeed
        from .seed_row_limit_request_crop import SeedRowLimitRequest_crop
        from .seed_row_limit_request_moisture import SeedRowLimitRequest_moisture
        from .seed_row_limit_request_opener import SeedRowLimitRequest_opener
        from .seed_row_limit_request_region import SeedRowLimitRequest_region
        from .seed_row_limit_request_soil import SeedRowLimitRequest_soil
        from .seed_row_limit_request_sources import SeedRowLimitRequest_sources

        fields: dict[str, Callable[[Any], None]] = {
            "crop": lambda n : setattr(self, 'crop', n.get_enum_value(SeedRowLimitRequest_crop)),
            "localLimits": lambda n : setattr(self, 'local_limits', n.get_collection_of_object_values(LocalLimitWithSeed)),
            "moisture": lambda n : setattr(self, 'moisture', n.get_enum_value(SeedRowLimitRequest_moisture)),
            "opener": lambda n : setattr(self, 'opener', n.get_enum_value(SeedRowLimitRequest_opener)),
            "products": lambda n : setattr(self, 'products', n.get_collection_of_object_values(ProductWithSeed)),
            "region": lambda n : setattr(self, 'region', n.get_enum_value(SeedRowLimitRequest_region)),
            "rowSpacing": lambda n : setattr(self, 'row_spacing', n.get_object_value(LengthQuantity)),
            "soil": lambda n : setattr(self, 'soil', n.get_enum_value(SeedRowLimitRequest_soil)),
            "sources": lambda n : setattr(self, 'sources', n.get_collection_of_enum_values(SeedRowLimitRequest_sources)),
            "spread": lambda n : setattr(self, 'spread', n.get_object_value(LengthQuantity)),
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
        writer.write_enum_value("crop", self.crop)
        writer.write_collection_of_object_values("localLimits", self.local_limits)
        writer.write_enum_value("moisture", self.moisture)
        writer.write_enum_value("opener", self.opener)
        writer.write_collection_of_object_values("products", self.products)
        writer.write_enum_value("region", self.region)
        writer.write_object_value("rowSpacing", self.row_spacing)
        writer.write_enum_value("soil", self.soil)
        writer.write_collection_of_enum_values("sources", self.sources)
        writer.write_object_value("spread", self.spread)
    

