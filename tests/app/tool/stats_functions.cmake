# What the tests of `ebbline stats` share: run a method in a folder of its own, read its answer, hold the
# example of its --help to what it prints. Wants EBBLINE (the program) and WORK (the folder).
file(REMOVE_RECURSE ${WORK})
file(MAKE_DIRECTORY ${WORK})

function(stats wanted)
    execute_process(COMMAND ${EBBLINE} stats ${ARGN} WORKING_DIRECTORY ${WORK}
        RESULT_VARIABLE code OUTPUT_VARIABLE out ERROR_VARIABLE err)
    if(NOT code EQUAL ${wanted})
        message(FATAL_ERROR "ebbline stats ${ARGN}: exit ${code}, wanted ${wanted}\n${out}${err}")
    endif()
    if("${out}" MATCHES "[^a-z](nan|inf)[^a-z]")
        message(FATAL_ERROR "ebbline stats ${ARGN}: no number at all\n${out}")
    endif()
    set(out "${out}" PARENT_SCOPE)
    set(err "${err}" PARENT_SCOPE)
endfunction()

# The answer's number at a path begins with these characters.
function(says number)
    string(JSON found GET "${out}" ${ARGN})
    if(NOT found MATCHES "^${number}")
        message(FATAL_ERROR "${ARGN} is ${found}, wanted ${number}\n${out}")
    endif()
endfunction()

# What --help shows is what the program prints.
function(example_holds method)
    execute_process(COMMAND ${EBBLINE} stats ${method} --help RESULT_VARIABLE code OUTPUT_VARIABLE help)
    string(REPLACE "\n  " "\n" help "${help}")
    string(FIND "${help}" "${ARGN}" place)
    if(NOT code EQUAL 0 OR place EQUAL -1)
        message(FATAL_ERROR "the example of stats ${method} is not what it prints:\n${ARGN}\n${help}")
    endif()
endfunction()

function(write name)
    list(JOIN ARGN "\n" text)
    file(WRITE ${WORK}/${name} "${text}\n")
endfunction()

# Bad input: the place and the reason, exit 2, nothing printed as an answer.
function(refused place)
    stats(2 ${ARGN})
    if(NOT err MATCHES "${place}" OR NOT out STREQUAL "")
        message(FATAL_ERROR "stats ${ARGN}: wanted ${place}\n${out}${err}")
    endif()
endfunction()
