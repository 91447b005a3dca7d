# cmake -DPROGRAM=<program> -DARGUMENTS=<a|b|c> -DSAID=<regex> -DFIXTURE=<vault> -DWORK=<folder> -P run_refused.cmake
#
# A program that cannot do as it was told says what is wrong, and ends with exit code 2.
cmake_minimum_required(VERSION 3.25)
file(REMOVE_RECURSE ${WORK})
file(MAKE_DIRECTORY ${WORK})
file(COPY ${FIXTURE}/ DESTINATION ${WORK}/vault)
file(WRITE ${WORK}/wrong "three calm herons swim\n")
string(REPLACE "WORK" "${WORK}" ARGUMENTS "${ARGUMENTS}")
string(REPLACE "VAULT" "${WORK}/vault" ARGUMENTS "${ARGUMENTS}")
string(REPLACE "WRONG" "${WORK}/wrong" ARGUMENTS "${ARGUMENTS}")
string(REPLACE "|" ";" ARGUMENTS "${ARGUMENTS}")
set(ENV{HOME} ${WORK})
execute_process(COMMAND ${PROGRAM} ${ARGUMENTS} TIMEOUT 60 RESULT_VARIABLE code OUTPUT_VARIABLE out ERROR_VARIABLE err)
if(NOT code STREQUAL "2" OR NOT err MATCHES "${SAID}")
    message(FATAL_ERROR "exit ${code}, said:\n${out}${err}wanted exit 2 and \"${SAID}\"")
endif()
