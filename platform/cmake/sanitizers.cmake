# EBBLINE_SANITIZE=address,undefined or thread: for every target of ours.
if(EBBLINE_SANITIZE)
    add_compile_options(-fsanitize=${EBBLINE_SANITIZE} -fno-omit-frame-pointer -fno-sanitize-recover=all)
    add_link_options(-fsanitize=${EBBLINE_SANITIZE})
    if(EBBLINE_SANITIZE MATCHES "thread" AND CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
        add_compile_options(-Wno-tsan)
    endif()
endif()
