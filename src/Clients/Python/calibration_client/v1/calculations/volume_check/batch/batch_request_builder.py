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
    from .....models.problem import Problem
    from .post_units_query_parameter_type import PostUnitsQueryParameterType

class BatchRequestBuilder(BaseRequestBuilder):
    """
    Builds and executes requests for operations under /v1/calculations/volume-check/batch
    """
    def __init__(self,request_adapter: RequestAdapter, path_parameters: Union[str, dict[str, Any]]) -> None:
        """
        Instantiates a new BatchRequestBuilder and sets the default values.
        param path_parameters: The raw url or the url-template parameters for the request.
        param request_adapter: The request adapter to use to execute the requests.
        Returns: None
        """
        super().__init__(request_adapter, "{+baseurl}/v1/calculations/volume-check/batch{?units*}", path_parameters)
    
    async def post(self,body: bytes, request_configuration: Optional[RequestConfiguration[BatchRequestBuilderPostQueryParameters]] = None) -> Optional[bytes]:
        """
        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every otherline gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. Aline may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: oncesome megabytes of answers are unread, no more questions are read. Nothing is stored.
        param body: Binary request body
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: bytes
        """
        if body is None:
            raise TypeError("body cannot be null.")
        request_info = self.to_post_request_information(
            body, request_configuration
        )
        from .....models.problem import Problem

        error_mapping: dict[str, type[ParsableFactory]] = {
            "400": Problem,
            "401": Problem,
            "403": Problem,
            "406": Problem,
            "415": Problem,
            "422": Problem,
            "429": Problem,
            "500": Problem,
            "503": Problem,
        }
        if not self.request_adapter:
            raise Exception("Http core is null") 
        return await self.request_adapter.send_primitive_async(request_info, "bytes", error_mapping)
    
    def to_post_request_information(self,body: bytes, request_configuration: Optional[RequestConfiguration[BatchRequestBuilderPostQueryParameters]] = None) -> RequestInformation:
        """
        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every otherline gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. Aline may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: oncesome megabytes of answers are unread, no more questions are read. Nothing is stored.
        param body: Binary request body
        param request_configuration: Configuration for the request such as headers, query parameters, and middleware options.
        Returns: RequestInformation
        """
        if body is None:
            raise TypeError("body cannot be null.")
        request_info = RequestInformation(Method.POST, self.url_template, self.path_parameters)
        request_info.configure(request_configuration)
        request_info.headers.try_add("Accept", "application/x-ndjson, application/problem+json")
        request_info.set_stream_content(body, "application/x-ndjson")
        return request_info
    
    def with_url(self,raw_url: str) -> BatchRequestBuilder:
        """
        Returns a request builder with the provided arbitrary URL. Using this method means any other path or query parameters are ignored.
        param raw_url: The raw URL to use for the request builder.
        Returns: BatchRequestBuilder
        """
        if raw_url is None:
            raise TypeError("raw_url cannot be null.")
        return BatchRequestBuilder(self.request_adapter, raw_url)
    
    @dataclass
    class BatchRequestBuilderPostQueryParameters():
        """
        One question a line, one answer a line, in the order of the questions. A line that cannot be answered gets its problem,with the status that it would have alone, and the others go on. Blank lines are counted but ask nothing; every otherline gets exactly one answer, so that a client can count them: a connection that ends early has cut the answer off. Aline may have 64 KiB unless the service is set otherwise, the body any length. Answers begin while questions still come. Read them while you send: oncesome megabytes of answers are unread, no more questions are read. Nothing is stored.
        """
        # Units of all answers; as-asked takes for each those of its question.
        units: Optional[PostUnitsQueryParameterType] = None

    
    @dataclass
    class BatchRequestBuilderPostRequestConfiguration(RequestConfiguration[BatchRequestBuilderPostQueryParameters]):
        """
        Configuration for the request such as headers, query parameters, and middleware options.
        """
        warn("This class is deprecated. Please use the generic RequestConfiguration class generated by the generator.", DeprecationWarning)
    

