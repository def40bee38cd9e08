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
    from ....models.new_lot_answer import NewLotAnswer
    from ....models.new_lot_request import NewLotRequest
    from ....models.problem import Problem
    from .batch.batch_request_builder import BatchRequestBuilder
    from .post_units_query_parameter_type import PostUnitsQueryParameterType

class NewLotRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/calculations/new-lot
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new NewLotRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/calculations/new-lot{?units*}", path_parameters)
    
    async def post(self,body: NewLotRequest, request_configuration: Optional[RequestConfiguration[NewLotRequestBuilderPostQueryParameters]] = None) -> Optional[NewLotAnswer]:
        """
        The rate for the same seeds per area from the new kernel mass; the mass per revolution predicted by the ratio of bulk densities;whether to test now, at the next fill or not at all; and what is sown if nothing is changed. The rule: test now when a density isunknown, or when the value in force is within the tolerance of the truth with a probability under 0.80; no test when lot,treatment and density are the same and that probability is 0.95 or more; otherwise test at the next fill. Nothing is stored.
        param body: A value in force, the lot behind it, and the lot that goes into the tank now.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: Optional[NewLotAnswer]
        """
        if body is None:
            raise TypeError("body cannot be null.")
        request_info = self.to_post_request_information(
            body, request_configuration
        )
        from ....models.problem import Problem

        error_mapping: dict[str, type[ParsableFactory]] = {
            "400": Problem,
            "401": Problem,
            "403": Problem,
            "408": Problem,
            "413": Problem,
            "415": Problem,
            "422": Problem,
            "429": Problem,
            "500": Problem,
            "503": Problem,
        }
        if not self.request_adapter:
            raise Exception("Http core is null") 
        from ....models.new_lot_answer import NewLotAnswer

        return await self.request_adapter.send_async(request_info, NewLotAnswer, error_mapping)
    
    def to_post_request_information(self,body: NewLotRequest, request_configuration: Optional[RequestConfiguration[NewLotRequestBuilderPostQueryParameters]] = None) -> RequestInformation:
        """
        The rate for the same seeds per area from the new kernel mass; the mass per revolution predicted by the ratio of bulk densities;whether to test now, at the next fill or not at all; and what is sown if nothing is changed. The rule: test now when a density isunknown, or when the value in force is within the tolerance of the truth with a probability under 0.80; no test when lot,treatment and density are the same and that probability is 0.95 or more; otherwise test at the next fill. Nothing is stored.
        param body: A value in force, the lot behind it, and the lot that goes into the tank now.
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        if body is None:
            raise TypeError("body cannot be null.")
        request_info = RequestInformation(Method.POST, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/json")
        request_info.set_content_from_parsable(self.request_adapter, "application/json", body)
        return request_info
    
    def with_url(self,raw_url: str) -> NewLotRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: NewLotRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return NewLotRequestBuilder(self.request_adapter, raw_url)
    
    @property
    def batch(self) -> BatchRequestBuilder:
        """
        The batch property
        """
        from .batch.batch_request_builder import BatchRequestBuilder

        return BatchRequestBuilder(self.request_adapter, self.path_parameters)
    
    @dataclass
    class NewLotRequestBuilderPostQueryParameters():
        """
        The rate for the same seeds per area from the new kernel mass; the mass per revolution predicted by the ratio of bulk densities;whether to test now, at the next fill or not at all; and what is sown if nothing is changed. The rule: test now when a density isunknown, or when the value in force is within the tolerance of the truth with a probability under 0.80; no test when lot,treatment and density are the same and that probability is 0.95 or more; otherwise test at the next fill. Nothing is stored.
        """
        # Units of the answer; as-asked takes those of the question.
        units: Optional[PostUnitsQueryParameterType] = None

    
    @dataclass
    class NewLotRequestBuilderPostRequestConfiguration(RequestConfiguration[NewLotRequestBuilderPostQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

