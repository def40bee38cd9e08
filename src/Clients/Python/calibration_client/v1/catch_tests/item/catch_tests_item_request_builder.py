from __future__ import annotations
from collections.abc import Callable
from dataclasses import dataclass, field
from kiota_abstractions.base_request_builder import BaseRequestBuilder
from kiota_abstractions.base_request_configuration import RequestConfiguration
from kiota_abstractions.default_query_parameters import QueryParameters
from kiota_abstractions.get_path_parameters import get_path_parameters
from kiota_abstractions.method import Method
from kiota_abstractions.request_adapter import RequestAdapter
from kiota_abstractions.request_information import RequestInformation
from kiota_abstractions.request_option import RequestOption
from kiota_abstractions.serialization import Parsable, ParsableFactory
from typing import Any, Optional, TYPE_CHECKING, Union
from warnings import warn

if TYPE_CHECKING:
    from ....models.catch_test_record_answer import CatchTestRecordAnswer
    from ....models.problem import Problem
    from .get_units_query_parameter_type import GetUnitsQueryParameterType
    from .recomputations.recomputations_request_builder import RecomputationsRequestBuilder

class CatchTestsItemRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/catch-tests/{id}
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new CatchTestsItemRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/catch-tests/{id}{?units*}", path_parameters)
    
    async def get(self,request_configuration: Optional[RequestConfiguration[CatchTestsItemRequestBuilderGetQueryParameters]] = None) -> Optional[CatchTestRecordAnswer]:
        """
        As entered, as asked and as answered then, with what came to light since. Quantities come in other units on request; sentences stay as written.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[CatchTestRecordAnswer]
        """
        request_info = self.to_get_request_information(
            request_configuration
        )
        from ....models.problem import Problem

        error_mapping: dict[str, type[ParsableFactory]] = {
            "400": Problem,
            "401": Problem,
            "403": Problem,
            "404": Problem,
            "422": Problem,
            "429": Problem,
            "500": Problem,
            "503": Problem,
        }
        if not self.request_adapter:
            raise Exception("Http core is null") 
        from ....models.catch_test_record_answer import CatchTestRecordAnswer

        return await self.request_adapter.send_async(request_info, CatchTestRecordAnswer, error_mapping)
    
    def to_get_request_information(self,request_configuration: Optional[RequestConfiguration[CatchTestsItemRequestBuilderGetQueryParameters]] = None) -> RequestInformation:
        """
        As entered, as asked and as answered then, with what came to light since. Quantities come in other units on request; sentences stay as written.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        request_info = RequestInformation(Method.GET, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        return request_info
    
    def with_url(self,raw_url: str) -> CatchTestsItemRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: CatchTestsItemRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return CatchTestsItemRequestBuilder(self.request_adapter, raw_url)
    
    @property
    def recomputations(self) -> RecomputationsRequestBuilder:
        """
        The recomputations property
        """
        from .recomputations.recomputations_request_builder import RecomputationsRequestBuilder

        return RecomputationsRequestBuilder(self.request_adapter, self.path_parameters)
    
    @dataclass
    class CatchTestsItemRequestBuilderGetQueryParameters():
        """
        As entered, as asked and as answered then, with what came to light since. Quantities come in other units on request; sentences stay as written.
        """
        # Units of the answer; as-asked keeps those of the question.
        units: Optional[GetUnitsQueryParameterType] = None

    
    @dataclass
    class CatchTestsItemRequestBuilderGetRequestConfiguration(RequestConfiguration[CatchTestsItemRequestBuilderGetQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

