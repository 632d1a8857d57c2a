# SPDX-License-Identifier: GPL-3.0-or-later
# The man page from what the program itself prints, so that the two can't differ.
#   cmake -DPROGRAM=… -DTEMPLATE=… -DOUTPUT=… -DPROJECT_VERSION=… -DDRAWERCAST_RELEASE_DATE=… -P man_page.cmake
execute_process(COMMAND ${PROGRAM} --help OUTPUT_VARIABLE HELP COMMAND_ERROR_IS_FATAL ANY)
string(REPLACE "\\" "\\e" HELP "${HELP}")
string(REPLACE "-" "\\-" HELP "${HELP}")
string(REGEX REPLACE "(^|\n)([.'])" "\\1\\\\&\\2" HELP "${HELP}") # a leading point would be a request
string(STRIP "${HELP}" HELP)
configure_file(${TEMPLATE} ${OUTPUT} @ONLY)
