# qmllint over every page, with nothing left to say. What is switched off, and why:
#   unqualified            a delegate that names its page's id is right, and Qt 6.4 has no way to say so
#   deferred-property-id   the controls' own parts are named to lay them out
# What is passed over, because the linter of Qt 6.4 does not know it:
#   a list<string> that is given a QStringList; value types of ours that live in a namespace;
#   what JavaScript can do with a list
# In: QMLLINT, ROOT, QML (folder of the built modules), QT_QML (folder of Qt's modules)
file(GLOB_RECURSE pages ${ROOT}/app/*.qml)
# A singleton is one by its module's list of files, so it is read where that list is.
list(TRANSFORM pages REPLACE "^${ROOT}/app/theme/" "${QML}/Ebbline/Theme/")
list(LENGTH pages count)
if(count LESS 60)
    message(FATAL_ERROR "only ${count} pages found")
endif()
execute_process(
    COMMAND ${QMLLINT} --bare -I ${QML} -I ${QT_QML} --unqualified disable --deferred-property-id disable ${pages}
    ERROR_VARIABLE said OUTPUT_VARIABLE said_too RESULT_VARIABLE ignored)
string(REPLACE ";" "," said "${said}${said_too}")
string(REGEX MATCHALL "(Warning|Error): [^\n]*" findings "${said}")
set(left "")
foreach(finding IN LISTS findings)
    if(NOT finding MATCHES "binding of type QStringList to QList<QString>"
       AND NOT finding MATCHES "Type \"(QList<)?ebbline::[a-z]+::[A-Za-z]+>?\" of property"
       AND NOT finding MATCHES "Property \"(includes|indexOf|join)\" not found on type \"(QVariantList|QStringList|QList<QString>)\""
       AND NOT finding MATCHES "No type found for property")
        list(APPEND left "${finding}")
    endif()
endforeach()
if(left)
    list(JOIN left "\n" text)
    message(FATAL_ERROR "qmllint:\n${text}")
endif()
# The linter itself must be at work: a page with a plain fault has to be found.
file(WRITE ${SCRATCH}/Faulty.qml "import QtQuick\nItem { nonsense: 1 }\n")
execute_process(COMMAND ${QMLLINT} --bare -I ${QML} -I ${QT_QML} ${SCRATCH}/Faulty.qml
    ERROR_VARIABLE said OUTPUT_VARIABLE said_too RESULT_VARIABLE ignored)
if(NOT "${said}${said_too}" MATCHES "nonsense")
    message(FATAL_ERROR "qmllint does not find a plain fault:\n${said}${said_too}")
endif()
message(STATUS "${count} pages checked")
