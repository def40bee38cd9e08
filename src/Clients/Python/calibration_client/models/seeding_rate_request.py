from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .area_quantity import AreaQuantity
    from .count_per_area_quantity import CountPerAreaQuantity
    from .count_per_length_quantity import CountPerLengthQuantity
    from .count_per_mass_quantity import CountPerMassQuantity
    from .length_quantity import LengthQuantity
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_per_thousand_quantity import MassPerThousandQuantity
    from .package_of_seed import PackageOfSeed
    from .price import Price
    from .rate_from_elsewhere import RateFromElsewhere
    from .ratio_quantity import RatioQuantity
    from .sample_of_seed import SampleOfSeed
    from .seeding_rate_request_crop import SeedingRateRequest_crop
    from .share_range import ShareRange

@dataclass
class SeedingRateRequest(Parsable):
    """
    What is fixed of a seeding rate (exactly one of targetStand, seedsPerArea, seedsPerRow and rate), and what is known of the seed.
    """
    # Area to be sown; gives seed, packages and cost for it. No default. Range: above 0 and up to 1000000 ha.
    area: Optional[AreaQuantity] = None
    # The crop; kernel mass, germination and emergence are compared with what is published for it.
    crop: Optional[SeedingRateRequest_crop] = None
    # Field emergence: plants per seed that can germinate. Goes with germination, never with survival. No default. Range: above 0 and up to 100 %.
    emergence: Optional[RatioQuantity] = None
    # Lowest and highest emergence that you think possible, around the emergence; gives its uncertainty.
    emergence_range: Optional[ShareRange] = None
    # Share of the pure seeds that germinate. No default. Range: above 0 and up to 100 %.
    germination: Optional[RatioQuantity] = None
    # Seeds in the germination test, for example 400; gives its uncertainty. No default.
    germination_seeds_tested: Optional[int] = None
    # Standard uncertainty of the kernel mass, relative; goes into the interval of the stand. No default. Range: above 0 and up to 50 %.
    kernel_mass_uncertainty: Optional[RatioQuantity] = None
    # How the seed is packed.
    package: Optional[PackageOfSeed] = None
    # Price of the seed by mass. Give this or the price of a package.
    price: Optional[Price] = None
    # Share of the mass that is pure seed. Default 100 %: not stated, so all of the mass is taken as pure seed; judgement, no published source; the seed tag says it. Range: above 0 and up to 100 %.
    purity: Optional[RatioQuantity] = None
    # Mass per area that is sown: the answer tells what it puts down and what stand it gives. No default. Range: above 0 and up to 100000 kg/ha.
    rate: Optional[MassPerAreaQuantity] = None
    # Distance between two rows; gives seeds and plants per length of row. No default. Range: above 0 and up to 10 m.
    row_spacing: Optional[LengthQuantity] = None
    # A sample that was counted and weighed.
    sample: Optional[SampleOfSeed] = None
    # Pure seeds per area that are to be sown. No default. Range: above 0 and up to 100000 /m2.
    seeds_per_area: Optional[CountPerAreaQuantity] = None
    # Seeds per mass, as a seed tag tells it. No default. Range: 200 to 1000000000 /kg.
    seeds_per_mass: Optional[CountPerMassQuantity] = None
    # Pure seeds per length of row that are to be sown. Needs rowSpacing. No default. Range: above 0 and up to 100000 /m.
    seeds_per_row: Optional[CountPerLengthQuantity] = None
    # A rate that you have from elsewhere; the answer compares it. Not with rate. No default. Range: above 0 and up to 100000 kg/ha.
    stated_rate: Optional[RateFromElsewhere] = None
    # Plants per pure seed, germination included, as many tables print it. Takes the place of germination and emergence. No default. Range: above 0 and up to 100 %.
    survival: Optional[RatioQuantity] = None
    # Lowest and highest survival that you think possible, around the survival; gives its uncertainty.
    survival_range: Optional[ShareRange] = None
    # Plants per area that are to stand. Needs germination and emergence, or survival. No default. Range: above 0 and up to 100000 /m2.
    target_stand: Optional[CountPerAreaQuantity] = None
    # Mass of a thousand kernels as sown, treatment included. Exactly one of this, seedsPerMass and sample. No default. Range: above 0 and up to 5000 g/1000.
    thousand_kernel_mass: Optional[MassPerThousandQuantity] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SeedingRateRequest:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SeedingRateRequest
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SeedingRateRequest()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .area_quantity import AreaQuantity
        from .count_per_area_quantity import CountPerAreaQuantity
        from .count_per_length_quantity import CountPerLengthQuantity
        from .count_per_mass_quantity import CountPerMassQuantity
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .package_of_seed import PackageOfSeed
        from .price import Price
        from .rate_from_elsewhere import RateFromElsewhere
        from .ratio_quantity import RatioQuantity
        from .sample_of_seed import SampleOfSeed
        from .seeding_rate_request_crop import SeedingRateRequest_crop
        from .share_range import ShareRange

        from .area_quantity import AreaQuantity
        from .count_per_area_quantity import CountPerAreaQuantity
        from .count_per_length_quantity import CountPerLengthQuantity
        from .count_per_mass_quantity import CountPerMassQuantity
        from .length_quantity import LengthQuantity
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .package_of_seed import PackageOfSeed
        from .price import Price
        from .rate_from_elsewhere import RateFromElsewhere
        from .ratio_quantity import RatioQuantity
        from .sample_of_seed import SampleOfSeed
        from .seeding_rate_request_crop import SeedingRateRequest_crop
        from .share_range import ShareRange

        fields: dict[str, Callable[[Any], None]] = {
            "area": lambda n : setattr(self, 'area', n.get_object_value(AreaQuantity)),
            "crop": lambda n : setattr(self, 'crop', n.get_enum_value(SeedingRateRequest_crop)),
            "emergence": lambda n : setattr(self, 'emergence', n.get_object_value(RatioQuantity)),
            "emergenceRange": lambda n : setattr(self, 'emergence_range', n.get_object_value(ShareRange)),
            "germination": lambda n : setattr(self, 'germination', n.get_object_value(RatioQuantity)),
            "germinationSeedsTested": lambda n : setattr(self, 'germination_seeds_tested', n.get_int_value()),
            "kernelMassUncertainty": lambda n : setattr(self, 'kernel_mass_uncertainty', n.get_object_value(RatioQuantity)),
            "package": lambda n : setattr(self, 'package', n.get_object_value(PackageOfSeed)),
            "price": lambda n : setattr(self, 'price', n.get_object_value(Price)),
            "purity": lambda n : setattr(self, 'purity', n.get_object_value(RatioQuantity)),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "rowSpacing": lambda n : setattr(self, 'row_spacing', n.get_object_value(LengthQuantity)),
            "sample": lambda n : setattr(self, 'sample', n.get_object_value(SampleOfSeed)),
            "seedsPerArea": lambda n : setattr(self, 'seeds_per_area', n.get_object_value(CountPerAreaQuantity)),
            "seedsPerMass": lambda n : setattr(self, 'seeds_per_mass', n.get_object_value(CountPerMassQuantity)),
            "seedsPerRow": lambda n : setattr(self, 'seeds_per_row', n.get_object_value(CountPerLengthQuantity)),
            "statedRate": lambda n : setattr(self, 'stated_rate', n.get_object_value(RateFromElsewhere)),
            "survival": lambda n : setattr(self, 'survival', n.get_object_value(RatioQuantity)),
            "survivalRange": lambda n : setattr(self, 'survival_range', n.get_object_value(ShareRange)),
            "targetStand": lambda n : setattr(self, 'target_stand', n.get_object_value(CountPerAreaQuantity)),
            "thousandKernelMass": lambda n : setattr(self, 'thousand_kernel_mass', n.get_object_value(MassPerThousandQuantity)),
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
        writer.write_object_value("area", self.area)
        writer.write_enum_value("crop", self.crop)
        writer.write_object_value("emergence", self.emergence)
        writer.write_object_value("emergenceRange", self.emergence_range)
        writer.write_object_value("germination", self.germination)
        writer.write_int_value("germinationSeedsTested", self.germination_seeds_tested)
        writer.write_object_value("kernelMassUncertainty", self.kernel_mass_uncertainty)
        writer.write_object_value("package", self.package)
        writer.write_object_value("price", self.price)
        writer.write_object_value("purity", self.purity)
        writer.write_object_value("rate", self.rate)
        writer.write_object_value("rowSpacing", self.row_spacing)
        writer.write_object_value("sample", self.sample)
        writer.write_object_value("seedsPerArea", self.seeds_per_area)
        writer.write_object_value("seedsPerMass", self.seeds_per_mass)
        writer.write_object_value("seedsPerRow", self.seeds_per_row)
        writer.write_object_value("statedRate", self.stated_rate)
        writer.write_object_value("survival", self.survival)
        writer.write_object_value("survivalRange", self.survival_range)
        writer.write_object_value("targetStand", self.target_stand)
        writer.write_object_value("thousandKernelMass", self.thousand_kernel_mass)
    

