# What is packaged does not depend on the folder it was built in: paths in the programs begin at the source.
# Only where it is packaged, so that the objects of everyday builds are shared between folders by ccache as before.
# Time enters nowhere: no source reads the time of building, and what Qt's rcc stores comes from SOURCE_DATE_EPOCH.
option(EBBLINE_REPRODUCIBLE "Leave the folder of the build out of the programs" OFF)
if(EBBLINE_REPRODUCIBLE)
    add_compile_options(-ffile-prefix-map=${PROJECT_BINARY_DIR}=build -ffile-prefix-map=${PROJECT_SOURCE_DIR}=.)
endif()
