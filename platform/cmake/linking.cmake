# On Linux every address that a program calls is looked up before it starts, and the table is read-only from then on.
if(CMAKE_SYSTEM_NAME STREQUAL "Linux" AND NOT EBBLINE_SANITIZE)
    add_link_options(-Wl,-z,relro,-z,now)
endif()
