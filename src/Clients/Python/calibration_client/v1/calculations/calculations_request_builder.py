from __future__ import annotations
from collections.abc import Callable
from kiota_abstractions.base_request_builder import BaseRequestBuilder
from kiota_abstractions.get_path_parameters import get_path_parameters
from kiota_abstractions.request_adapter import RequestAdapter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .bulk_density.bulk_density_request_builder import BulkDensityRequestBuilder
    from .catch_plan.catch_plan_request_builder import CatchPlanRequestBuilder
    from .catch_test.catch_test_request_builder import CatchTestRequestBuilder
    from .distance_sensor.distance_sensor_request_builder import DistanceSensorRequestBuilder
    from .drive_wheel_turns.drive_wheel_turns_request_builder import DriveWheelTurnsRequestBuilder
    from .meter_speed.meter_speed_request_builder import MeterSpeedRequestBuilder
    from .new_lot.new_lot_request_builder import NewLotRequestBuilder
    from .product_rate.product_rate_request_builder import ProductRateRequestBuilder
    from .seeding_rate.seeding_rate_request_builder import SeedingRateRequestBuilder
    from .seed_row_limit.seed_row_limit_request_builder import SeedRowLimitRequestBuilder
    from .stand_count.stand_count_request_builder import StandCountRequestBuilder
    from .stand_risk.stand_risk_request_builder import StandRiskRequestBuilder
    from .volume_check.volume_check_request_builder import VolumeCheckRequestBuilder

class CalculationsRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/calculations
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new CalculationsRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/calculations", path_parameters)
    
    @property
    def bulk_density(self) -> BulkDensityRequestBuilder:
        """
        The bulkDensity property
        """
        from .bulk_density.bulk_density_request_builder import BulkDensityRequestBuilder

        return BulkDensityRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def catch_plan(self) -> CatchPlanRequestBuilder:
        """
        The catchPlan property
        """
        from .catch_plan.catch_plan_request_builder import CatchPlanRequestBuilder

        return CatchPlanRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def catch_test(self) -> CatchTestRequestBuilder:
        """
        The catchTest property
        """
        from .catch_test.catch_test_request_builder import CatchTestRequestBuilder

        return CatchTestRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def distance_sensor(self) -> DistanceSensorRequestBuilder:
        """
        The distanceSensor property
        """
        from .distance_sensor.distance_sensor_request_builder import DistanceSensorRequestBuilder

        return DistanceSensorRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def drive_wheel_turns(self) -> DriveWheelTurnsRequestBuilder:
        """
        The driveWheelTurns property
        """
        from .drive_wheel_turns.drive_wheel_turns_request_builder import DriveWheelTurnsRequestBuilder

        return DriveWheelTurnsRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def meter_speed(self) -> MeterSpeedRequestBuilder:
        """
        The meterSpeed property
        """
        from .meter_speed.meter_speed_request_builder import MeterSpeedRequestBuilder

        return MeterSpeedRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def new_lot(self) -> NewLotRequestBuilder:
        """
        The newLot property
        """
        from .new_lot.new_lot_request_builder import NewLotRequestBuilder

        return NewLotRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def product_rate(self) -> ProductRateRequestBuilder:
        """
        The productRate property
        """
        from .product_rate.product_rate_request_builder import ProductRateRequestBuilder

        return ProductRateRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def seed_row_limit(self) -> SeedRowLimitRequestBuilder:
        """
        The seedRowLimit property
        """
        from .seed_row_limit.seed_row_limit_request_builder import SeedRowLimitRequestBuilder

        return SeedRowLimitRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def seeding_rate(self) -> SeedingRateRequestBuilder:
        """
        The seedingRate property
        """
        from .seeding_rate.seeding_rate_request_builder import SeedingRateRequestBuilder

        return SeedingRateRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def stand_count(self) -> StandCountRequestBuilder:
        """
        The standCount property
        """
        from .stand_count.stand_count_request_builder import StandCountRequestBuilder

        return StandCountRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def stand_risk(self) -> StandRiskRequestBuilder:
        """
        The standRisk property
        """
        from .stand_risk.stand_risk_request_builder import StandRiskRequestBuilder

        return StandRiskRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def volume_check(self) -> VolumeCheckRequestBuilder:
        """
        The volumeCheck property
        """
        from .volume_check.volume_check_request_builder import VolumeCheckRequestBuilder

        return VolumeCheckRequestBuilder(self.request_adapter, self.path_parameters)
    

