@echo off
rem Starts Clenchbook on Windows with the settings that measured fastest (docs/performance.md).
rem
rem The first month-end also notes which classes it used; they are then laid ready in an archive in
rem the user's own folder, so that later runs start faster. It may be deleted at any time.
setlocal DisableDelayedExpansion
set "CLENCHBOOK_STARTED=%~0"
set "JAR=%~dp0clenchbook.jar"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
set "SETTINGS=-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xlog:disable -Xlog:all=error:stderr"
if not defined LOCALAPPDATA goto plain

set "CACHE=%LOCALAPPDATA%\clenchbook"
set "ARCHIVE=%CACHE%\classes.jsa"
set "STAMP=%CACHE%\classes.stamp"
for %%F in ("%JAR%") do set "WANTED=%%~zF %%~tF %JAR% %JAVA%"
set "MADE="
if exist "%STAMP%" set /p MADE=<"%STAMP%"
if exist "%ARCHIVE%" if "%MADE%"=="%WANTED%" goto quick
if /i not "%~1"=="month-end" goto plain
if not exist "%CACHE%" mkdir "%CACHE%" 2>nul
if not exist "%CACHE%" goto plain

set "LIST=%CACHE%\classes.list"
"%JAVA%" %SETTINGS% "-XX:DumpLoadedClassList=%LIST%" -jar "%JAR%" %*
set "CODE=%ERRORLEVEL%"
if %CODE% gtr 1 goto done
del "%ARCHIVE%" "%STAMP%" 2>nul
"%JAVA%" %SETTINGS% -Xshare:dump "-XX:SharedClassListFile=%LIST%" "-XX:SharedArchiveFile=%ARCHIVE%" -jar "%JAR%" >nul 2>nul
if not errorlevel 1 >"%STAMP%" echo %WANTED%
:done
del "%LIST%" 2>nul
exit /b %CODE%

:quick
"%JAVA%" %SETTINGS% "-XX:SharedArchiveFile=%ARCHIVE%" -jar "%JAR%" %*
exit /b %ERRORLEVEL%

:plain
"%JAVA%" %SETTINGS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%
