from enum import Enum

class KeyRequest_scopes(str, Enum):
    Calculate = "calculate",
    Read = "read",
    Write = "write",
    Admin = "admin",

