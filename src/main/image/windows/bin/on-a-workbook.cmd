@echo off
rem What a double click runs: on-a-workbook month-end or send, and the workbook. Asks for the
rem workbook where none is given or none of that name is there, as when a name with an ampersand and
rem no blank was cut on its way. The window stays open until what it says was read.
setlocal DisableDelayedExpansion
set "WHAT=%~1"
set "BOOK=%~2"
set "CLENCHBOOK_HOLD=yes"

:look
if not defined BOOK goto ask
if exist "%BOOK%" goto run
echo There is no file "%BOOK%"

:ask
set "BOOK="
set /p "BOOK=Drag your workbook into this window, then press Enter (Enter alone ends): "
if not defined BOOK exit /b 2
set "BOOK=%BOOK:"=%"
goto look

rem The launcher takes over: called, it would read signs like % in the workbook's name anew.
:run
if "%WHAT%"=="month-end" "%~dp0clenchbook.cmd" month-end "%BOOK%" --open
"%~dp0clenchbook.cmd" %WHAT% "%BOOK%"
