# qmllint over every page, with nothing left to say. What is switched off, and why:
#   unqualified            a delegate that names its page's id is right, and Qt 6.4 has no way to say so
#   deferred-property-id   the controls' own parts are named to lay them out; later linters do not know the option
# What is passed over by name, because the linter does not find it: value types and a video sink of ours that live in a
# namespace or come from C++. And what only the linter of Qt 6.4 does not know: a list<string> that is given a QStringList,
# what JavaScript can do with a list, and one more such type. Those of Qt 6.8 need none of that.
# In: QMLLINT, ROOT, QML (folder of the built modules), QT_QML (folder of Qt's modules), QT_VERSION, SCRATCH
file(GLOB_RECURSE pages ${ROOT}/app/*.qml)
# A singleton is one by its module's list of files, so it is read where that list is.
list(TRANSFORM pages REPLACE "^${ROOT}/app/theme/" "${QML}/Ebbline/Theme/")
list(LENGTH pages count)
if(count LESS 60)
    message(FATAL_ERROR "only ${count} pages found")
endif()
set(options --bare -I ${QML} -I ${QT_QML} --unqualified disable)
set(passed_over
    "Type \"ebbline::(controls::IdleLock|charts::Event|deskapp::QrMatrix)\" of property"
    "No type found for property \"(sink|matrix|events)\"")
if(QT_VERSION VERSION_LESS 6.5)
    list(APPEND options --deferred-property-id disable)
    list(APPEND passed_over
        "binding of type QStringList to QList<QString>"
        "Property \"(includes|indexOf|join)\" not found on type \"(QVariantList|QStringList|QList<QString>)\""
        "No type found for property \"picture\"")
endif()
execute_process(COMMAND ${QMLLINT} ${options} ${pages}
    ERROR_VARIABLE said OUTPUT_VARIABLE said_too RESULT_VARIABLE ignored)
string(REPLACE ";" "," said "${said}${said_too}")
string(REGEX MATCHALL "(Warning|Error): [^\n]*" findings "${said}")
set(left "")
foreach(finding IN LISTS findings)
    set(known FALSE)
    foreach(each IN LISTS passed_over)
        if(finding MATCHES "${each}")
            set(known TRUE)
        endif()
    endforeach()
    if(NOT known)
        list(APPEND left "${finding}")
    endif()
endforeach()
if(left)
    list(JOIN left "\n" text)
    message(FATAL_ERROR "qmllint:\n${text}")
endif()
# The linter itself must be at work, with these very options: a page with a plain fault has to be found. An option that it
# does not know makes it read nothing.
file(WRITE ${SCRATCH}/Faulty.qml "import QtQuick\nItem { nonsense: 1 }\n")
execute_process(COMMAND ${QMLLINT} ${options} ${SCRATCH}/Faulty.qml
    ERROR_VARIABLE said OUTPUT_VARIABLE said_too RESULT_VARIABLE ignored)
if(NOT "${said}${said_too}" MATCHES "nonsense")
    message(FATAL_ERROR "qmllint does not find a plain fault:\n${said}${said_too}")
endif()
message(STATUS "${count} pages checked")
