from __future__ import annotations
import datetime
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
    from .....models.problem import Problem
    from .....models.values_in_force_answer import ValuesInForceAnswer
    from .get_units_query_parameter_type import GetUnitsQueryParameterType

class ValuesInForceRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/machines/{id}/values-in-force
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new ValuesInForceRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/machines/{id}/values-in-force{?at*,element*,meter*,product*,setting*,units*}", path_parameters)
    
    async def get(self,request_configuration: Optional[RequestConfiguration[ValuesInForceRequestBuilderGetQueryParameters]] = None) -> Optional[ValuesInForceAnswer]:
        """
        For each meter, element, setting and product with an adopted value: the number in the controller, since when, by whomand why, with which lot and treatment it was found, and what it rests on. A correction of the test behind it is said,but the number stays in force until another is adopted, because the controller uses it until then.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[ValuesInForceAnswer]
        """
        request_info = self.to_get_request_information(
            request_configuration
        )
        from .....models.problem import Problem

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
        from .....models.values_in_force_answer import ValuesInForceAnswer

        return await self.request_adapter.send_async(request_info, ValuesInForceAnswer, error_mapping)
    
    def to_get_request_information(self,request_configuration: Optional[RequestConfiguration[ValuesInForceRequestBuilderGetQueryParameters]] = None) -> RequestInformation:
        """
        For each meter, element, setting and product with an adopted value: the number in the controller, since when, by whomand why, with which lot and treatment it was found, and what it rests on. A correction of the test behind it is said,but the number stays in force until another is adopted, because the controller uses it until then.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        request_info = RequestInformation(Method.GET, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        return request_info
    
    def with_url(self,raw_url: str) -> ValuesInForceRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: ValuesInForceRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return ValuesInForceRequestBuilder(self.request_adapter, raw_url)
    
    @dataclass
    class ValuesInForceRequestBuilderGetQueryParameters():
        """
        For each meter, element, setting and product with an adopted value: the number in the controller, since when, by whomand why, with which lot and treatment it was found, and what it rests on. A correction of the test behind it is said,but the number stays in force until another is adopted, because the controller uses it until then.
        """
        # In force at this instant, RFC 3339; default now.
        at: Optional[datetime.datetime] = None

        # Only this metering element.
        element: Optional[str] = None

        # Only this position.
        meter: Optional[str] = None

        # Only the product with this id.
        product: Optional[str] = None

        # Only this setting.
        setting: Optional[str] = None

        # Units of the answer; as-asked keeps what was entered.
        units: Optional[GetUnitsQueryParameterType] = None

    
    @dataclass
    class ValuesInForceRequestBuilderGetRequestConfiguration(RequestConfiguration[ValuesInForceRequestBuilderGetQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

