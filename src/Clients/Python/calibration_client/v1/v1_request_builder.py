from __future__ import annotations
from collections.abc import Callable
from kiota_abstractions.base_request_builder import BaseRequestBuilder
from kiota_abstractions.get_path_parameters import get_path_parameters
from kiota_abstractions.request_adapter import RequestAdapter
from typing import Any, Optional, TYPE_CHECKING, Union

if TYPE_CHECKING:
    from .adoptions.adoptions_request_builder import AdoptionsRequestBuilder
    from .calculations.calculations_request_builder import CalculationsRequestBuilder
    from .catch_tests.catch_tests_request_builder import CatchTestsRequestBuilder
    from .codes.codes_request_builder import CodesRequestBuilder
    from .containers.containers_request_builder import ContainersRequestBuilder
    from .history.history_request_builder import HistoryRequestBuilder
    from .lots.lots_request_builder import LotsRequestBuilder
    from .machines.machines_request_builder import MachinesRequestBuilder
    from .plans.plans_request_builder import PlansRequestBuilder
    from .products.products_request_builder import ProductsRequestBuilder
    from .scales.scales_request_builder import ScalesRequestBuilder
    from .scale_checks.scale_checks_request_builder import ScaleChecksRequestBuilder
    from .units.units_request_builder import UnitsRequestBuilder

class V1RequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new V1RequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1", path_parameters)
    
    @property
    def adoptions(self) -> AdoptionsRequestBuilder:
        """
        The adoptions property
        """
        from .adoptions.adoptions_request_builder import AdoptionsRequestBuilder

        return AdoptionsRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def calculations(self) -> CalculationsRequestBuilder:
        """
        The calculations property
        """
        from .calculations.calculations_request_builder import CalculationsRequestBuilder

        return CalculationsRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def catch_tests(self) -> CatchTestsRequestBuilder:
        """
        The catchTests property
        """
        from .catch_tests.catch_tests_request_builder import CatchTestsRequestBuilder

        return CatchTestsRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def codes(self) -> CodesRequestBuilder:
        """
        The codes property
        """
        from .codes.codes_request_builder import CodesRequestBuilder

        return CodesRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def containers(self) -> ContainersRequestBuilder:
        """
        The containers property
        """
        from .containers.containers_request_builder import ContainersRequestBuilder

        return ContainersRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def history(self) -> HistoryRequestBuilder:
        """
        The history property
        """
        from .history.history_request_builder import HistoryRequestBuilder

        return HistoryRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def lots(self) -> LotsRequestBuilder:
        """
        The lots property
        """
        from .lots.lots_request_builder import LotsRequestBuilder

        return LotsRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def machines(self) -> MachinesRequestBuilder:
        """
        The machines property
        """
        from .machines.machines_request_builder import MachinesRequestBuilder

        return MachinesRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def plans(self) -> PlansRequestBuilder:
        """
        The plans property
        """
        from .plans.plans_request_builder import PlansRequestBuilder

        return PlansRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def products(self) -> ProductsRequestBuilder:
        """
        The products property
        """
        from .products.products_request_builder import ProductsRequestBuilder

        return ProductsRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def scale_checks(self) -> ScaleChecksRequestBuilder:
        """
        The scaleChecks property
        """
        from .scale_checks.scale_checks_request_builder import ScaleChecksRequestBuilder

        return ScaleChecksRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def scales(self) -> ScalesRequestBuilder:
        """
        The scales property
        """
        from .scales.scales_request_builder import ScalesRequestBuilder

        return ScalesRequestBuilder(self.request_adapter, self.path_parameters)
    
    @property
    def units(self) -> UnitsRequestBuilder:
        """
        The units property
        """
        from .units.units_request_builder import UnitsRequestBuilder

        return UnitsRequestBuilder(self.request_adapter, self.path_parameters)
    

