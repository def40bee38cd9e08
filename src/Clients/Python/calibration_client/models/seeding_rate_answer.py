from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.serialization import AdditionalDataHolder, Parsable, ParseNode, SerializationWriter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .assumption_answer import AssumptionAnswer
    from .caution_answer import CautionAnswer
    from .count_per_area_quantity import CountPerAreaQuantity
    from .count_per_length_quantity import CountPerLengthQuantity
    from .count_per_mass_quantity import CountPerMassQuantity
    from .expected_stand import ExpectedStand
    from .finding_answer import FindingAnswer
    from .mass_per_area_quantity import MassPerAreaQuantity
    from .mass_per_thousand_quantity import MassPerThousandQuantity
    from .mass_quantity import MassQuantity
    from .packages_answer import PackagesAnswer
    from .ratio_quantity import RatioQuantity
    from .seed_cost_answer import SeedCostAnswer
    from .stand_uncertainty import StandUncertainty
    from .stated_rate_answer import StatedRateAnswer

@dataclass
class SeedingRateAnswer(AdditionalDataHolder, Parsable):
    """
    A seeding rate with what it holds, brings up and costs.
    """
    # Stores additional data not described in the OpenAPI description found when deserializing. Can be used for serialization as well.
    additional_data: dict[str, Any] = field(default_factory=dict)

    # Values used that the question did not state.
    assumptions: Optional[list[AssumptionAnswer]] = None
    # What can hurt a person. The product label goes first.
    cautions: Optional[list[CautionAnswer]] = None
    # What the seed costs; absent without a price.
    cost: Optional[SeedCostAnswer] = None
    # Version of the engine that answered.
    engine_version: Optional[str] = None
    # What was noticed; unusual is possible and is not refused.
    findings: Optional[list[FindingAnswer]] = None
    # The outcome in one or two sentences that can be shown as they are.
    headline: Optional[str] = None
    # Mass that holds one mass of pure live seed; always with the unit 1. Absent without germination.
    mass_for_one_pure_live: Optional[RatioQuantity] = None
    # Seed for the whole area; absent without an area.
    mass_over_area: Optional[MassQuantity] = None
    # Packages; absent when none is described.
    packages: Optional[PackagesAnswer] = None
    # Plants expected per area; absent when germination and emergence, or survival, are not given.
    plants: Optional[ExpectedStand] = None
    # Plants expected per length of row; absent without a row spacing or plants.
    plants_per_row: Optional[CountPerLengthQuantity] = None
    # Share of the mass that is pure and germinates: purity times germination; absent without germination.
    pure_live_seed: Optional[RatioQuantity] = None
    # Mass to sow per area, with what is no pure seed.
    rate: Optional[MassPerAreaQuantity] = None
    # Pure seeds per area.
    seeds_per_area: Optional[CountPerAreaQuantity] = None
    # Seeds per mass of pure seed.
    seeds_per_mass: Optional[CountPerMassQuantity] = None
    # Pure seeds per length of row; absent without a row spacing.
    seeds_per_row: Optional[CountPerLengthQuantity] = None
    # The rate from elsewhere, compared; absent when none was stated.
    stated_rate: Optional[StatedRateAnswer] = None
    # Plants per pure seed: germination times emergence, or as given.
    survival: Optional[RatioQuantity] = None
    # Mass of a thousand kernels.
    thousand_kernel_mass: Optional[MassPerThousandQuantity] = None
    # Where the uncertainty of the stand comes from: standard uncertainties, relative; their squares add up. Empty when none was stated.
    uncertainty_parts: Optional[list[StandUncertainty]] = None
    
    @staticmethod
    def create_from_discriminator_value(parse_node: ParseNode) -> SeedingRateAnswer:
        """
        Creates a new instance of the appropriate class based on discriminator value
        param parse_node: The parse node to use to read the discriminator value and create the object
        Returns: SeedingRateAnswer
        """
        if parse_node is None:
            raise TypeError("parse_node cannot be null.")
        return SeedingRateAnswer()
    
    def get_field_deserializers(self,) -> dict[str, Callable[[ParseNode], None]]:
        """
        The deserialization information for the current model
        Returns: dict[str, Callable[[ParseNode], None]]
        """
        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .count_per_area_quantity import CountPerAreaQuantity
        from .count_per_length_quantity import CountPerLengthQuantity
        from .count_per_mass_quantity import CountPerMassQuantity
        from .expected_stand import ExpectedStand
        from .finding_answer import FindingAnswer
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .mass_quantity import MassQuantity
        from .packages_answer import PackagesAnswer
        from .ratio_quantity import RatioQuantity
        from .seed_cost_answer import SeedCostAnswer
        from .stand_uncertainty import StandUncertainty
        from .stated_rate_answer import StatedRateAnswer

        from .assumption_answer import AssumptionAnswer
        from .caution_answer import CautionAnswer
        from .count_per_area_quantity import CountPerAreaQuantity
        from .count_per_length_quantity import CountPerLengthQuantity
        from .count_per_mass_quantity import CountPerMassQuantity
        from .expected_stand import ExpectedStand
        from .finding_answer import FindingAnswer
        from .mass_per_area_quantity import MassPerAreaQuantity
        from .mass_per_thousand_quantity import MassPerThousandQuantity
        from .mass_quantity import MassQuantity
        from .packages_answer import PackagesAnswer
        from .ratio_quantity import RatioQuantity
        from .seed_cost_answer import SeedCostAnswer
        from .stand_uncertainty import StandUncertainty
        from .stated_rate_answer import StatedRateAnswer

        fields: dict[str, Callable[[Any], None]] = {
            "assumptions": lambda n : setattr(self, 'assumptions', n.get_collection_of_object_values(AssumptionAnswer)),
            "cautions": lambda n : setattr(self, 'cautions', n.get_collection_of_object_values(CautionAnswer)),
            "cost": lambda n : setattr(self, 'cost', n.get_object_value(SeedCostAnswer)),
            "engineVersion": lambda n : setattr(self, 'engine_version', n.get_str_value()),
            "findings": lambda n : setattr(self, 'findings', n.get_collection_of_object_values(FindingAnswer)),
            "headline": lambda n : setattr(self, 'headline', n.get_str_value()),
            "massForOnePureLive": lambda n : setattr(self, 'mass_for_one_pure_live', n.get_object_value(RatioQuantity)),
            "massOverArea": lambda n : setattr(self, 'mass_over_area', n.get_object_value(MassQuantity)),
            "packages": lambda n : setattr(self, 'packages', n.get_object_value(PackagesAnswer)),
            "plants": lambda n : setattr(self, 'plants', n.get_object_value(ExpectedStand)),
            "plantsPerRow": lambda n : setattr(self, 'plants_per_row', n.get_object_value(CountPerLengthQuantity)),
            "pureLiveSeed": lambda n : setattr(self, 'pure_live_seed', n.get_object_value(RatioQuantity)),
            "rate": lambda n : setattr(self, 'rate', n.get_object_value(MassPerAreaQuantity)),
            "seedsPerArea": lambda n : setattr(self, 'seeds_per_area', n.get_object_value(CountPerAreaQuantity)),
            "seedsPerMass": lambda n : setattr(self, 'seeds_per_mass', n.get_object_value(CountPerMassQuantity)),
            "seedsPerRow": lambda n : setattr(self, 'seeds_per_row', n.get_object_value(CountPerLengthQuantity)),
            "statedRate": lambda n : setattr(self, 'stated_rate', n.get_object_value(StatedRateAnswer)),
            "survival": lambda n : setattr(self, 'survival', n.get_object_value(RatioQuantity)),
            "thousandKernelMass": lambda n : setattr(self, 'thousand_kernel_mass', n.get_object_value(MassPerThousandQuantity)),
            "uncertaintyParts": lambda n : setattr(self, 'uncertainty_parts', n.get_collection_of_object_values(StandUncertainty)),
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
        writer.write_collection_of_object_values("assumptions", self.assumptions)
        writer.write_collection_of_object_values("cautions", self.cautions)
        writer.write_object_value("cost", self.cost)
        writer.write_str_value("engineVersion", self.engine_version)
        writer.write_collection_of_object_values("findings", self.findings)
        writer.write_str_value("headline", self.headline)
        writer.write_object_value("massForOnePureLive", self.mass_for_one_pure_live)
        writer.write_object_value("massOverArea", self.mass_over_area)
        writer.write_object_value("packages", self.packages)
        writer.write_object_value("plants", self.plants)
        writer.write_object_value("plantsPerRow", self.plants_per_row)
        writer.write_object_value("pureLiveSeed", self.pure_live_seed)
        writer.write_object_value("rate", self.rate)
        writer.write_object_value("seedsPerArea", self.seeds_per_area)
        writer.write_object_value("seedsPerMass", self.seeds_per_mass)
        writer.write_object_value("seedsPerRow", self.seeds_per_row)
        writer.write_object_value("statedRate", self.stated_rate)
        writer.write_object_value("survival", self.survival)
        writer.write_object_value("thousandKernelMass", self.thousand_kernel_mass)
        writer.write_collection_of_object_values("uncertaintyParts", self.uncertainty_parts)
        writer.write_additional_data_value(self.additional_data)
    

