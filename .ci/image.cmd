@echo off
rem Builds, tries and packs the program with its own Java on this Windows machine, in one step.
rem Needs a JDK 19 or newer (JAVA_HOME) and Maven. Only read, not run: the project has no Windows.
cd /d "%~dp0.."
rem Maven is a batch file: without call, nothing after it would run.
call mvn -B -q -DskipTests package -Pimage
if errorlevel 1 exit /b 1
rem a book with a blank in its path through the real thing: exit code 0, and a page.
set "TRY=%TEMP%\Clenchbook try"
if exist "%TRY%" rmdir /s /q "%TRY%"
mkdir "%TRY%"
copy sample-workbooks\thornfield-*.* "%TRY%" >nul
call target\image\clenchbook\bin\clenchbook.cmd month-end "%TRY%\thornfield-metric.xlsx" --month 2026-10
if errorlevel 1 exit /b 1
if not exist "%TRY%\thornfield-metric reports\2026-10\index.html" exit /b 1
rem A zip for who unpacks by a right click; Windows brings tar, which writes one by its ending.
tar -a -cf target\image\clenchbook-Windows.zip -C target\image clenchbook
if errorlevel 1 exit /b 1
dir target\image
