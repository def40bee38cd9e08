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
    from .....models.plan_set_up_answer import PlanSetUpAnswer
    from .....models.problem import Problem
    from .get_units_query_parameter_type import GetUnitsQueryParameterType

class SetUpRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/plans/{id}/set-up
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new SetUpRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/plans/{id}/set-up{?units*}", path_parameters)
    
    async def get(self,request_configuration: Optional[RequestConfiguration[SetUpRequestBuilderGetQueryParameters]] = None) -> Optional[PlanSetUpAnswer]:
        """
        One view of the field before the first catch: rates from the stand, the lot and the nutrients wanted; whether each elementreaches its rate at the planned ground speeds; area per hour; where the fan may stand; what is placed with the seed against published limits; and whata new lot means for the value in force. What cannot be computed yet is listed under open, with what to add; the rest isanswered all the same. Computed anew with each call; nothing is stored.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[PlanSetUpAnswer]
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
        from .....models.plan_set_up_answer import PlanSetUpAnswer

        return await self.request_adapter.send_async(request_info, PlanSetUpAnswer, error_mapping)
    
    def to_get_request_information(self,request_configuration: Optional[RequestConfiguration[SetUpRequestBuilderGetQueryParameters]] = None) -> RequestInformation:
        """
        One view of the field before the first catch: rates from the stand, the lot and the nutrients wanted; whether each elementreaches its rate at the planned ground speeds; area per hour; where the fan may stand; what is placed with the seed against published limits; and whata new lot means for the value in force. What cannot be computed yet is listed under open, with what to add; the rest isanswered all the same. Computed anew with each call; nothing is stored.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        request_info = RequestInformation(Method.GET, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        return request_info
    
    def with_url(self,raw_url: str) -> SetUpRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: SetUpRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return SetUpRequestBuilder(self.request_adapter, raw_url)
    
    @dataclass
    class SetUpRequestBuilderGetQueryParameters():
        """
        One view of the field before the first catch: rates from the stand, the lot and the nutrients wanted; whether each elementreaches its rate at the planned ground speeds; area per hour; where the fan may stand; what is placed with the seed against published limits; and whata new lot means for the value in force. What cannot be computed yet is listed under open, with what to add; the rest isanswered all the same. Computed anew with each call; nothing is stored.
        """
        # Units of the answer; as-asked takes those of the plan and its records.
        units: Optional[GetUnitsQueryParameterType] = None

    
    @dataclass
    class SetUpRequestBuilderGetRequestConfiguration(RequestConfiguration[SetUpRequestBuilderGetQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

