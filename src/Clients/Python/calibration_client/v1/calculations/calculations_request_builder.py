from __future__ import annotations
from collections.abc import Callable
from kiota_abstractions.base_request_builder import BaseRequestBuilder
from kiota_abstractions.get_path_parameters import get_path_parameters
from kiota_abstractions.request_adapter import RequestAdapter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .catch_plan.catch_plan_request_builder import CatchPlanRequestBuilder
    from .catch_test.catch_test_request_builder import CatchTestRequestBuilder
    from .meter_speed.meter_speed_request_builder import MeterSpeedRequestBuilder

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
    def meter_speed(self) -> MeterSpeedRequestBuilder:
        """
        The meterSpeed property
        """
        from .meter_speed.meter_speed_request_builder import MeterSpeedRequestBuilder

        return MeterSpeedRequestBuilder(self.request_adapter, self.path_parameters)
    

