@echo off
rem Starts Clenchbook on Windows with the Java beside it. It needs nothing of the machine.
setlocal DisableDelayedExpansion
set "CLENCHBOOK_STARTED=%~0"
for %%H in ("%~dp0..") do set "PROGRAM=%%~fH"
rem Settings that are meant for another Java on this machine; CLENCHBOOK_JAVA is for this one.
set "JAVA_TOOL_OPTIONS="
set "JDK_JAVA_OPTIONS="
set "_JAVA_OPTIONS="
set "SETTINGS=-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xlog:disable"
"%PROGRAM%\runtime\bin\java.exe" %SETTINGS% "-XX:SharedArchiveFile=%PROGRAM%\lib\classes.jsa" "-Dorg.sqlite.lib.path=%PROGRAM%\lib" %CLENCHBOOK_JAVA% -jar "%PROGRAM%\lib\clenchbook.jar" %*
set "CODE=%ERRORLEVEL%"
if defined CLENCHBOOK_HOLD pause
exit /b %CODE%
