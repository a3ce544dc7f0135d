@echo off
rem Starts Kelter from the folder that this file lies in. See the file "kelter" beside it.
setlocal DisableDelayedExpansion
for %%I in ("%~dp0..") do set "KELTER_HOME_DIR=%%~fI"
set "KELTER_COMPILER=-XX:TieredStopAtLevel=1"
if /i "%~1"=="readings" set "KELTER_COMPILER=-XX:TieredStopAtLevel=4"
if /i "%~1:%~2"=="diagnose:-" set "KELTER_COMPILER=-XX:TieredStopAtLevel=4 -XX:Tier4InvocationThreshold=50000 -XX:Tier4MinInvocationThreshold=6000 -XX:Tier4CompileThreshold=150000 -XX:Tier4BackEdgeThreshold=400000"
set "KELTER_COLLECTOR=-XX:+UseG1GC"
for %%W in (learn stats import) do if /i "%~1:%~2"=="book:%%W" set "KELTER_COLLECTOR=-XX:+UseSerialGC -Xmn64m"
if /i "%~1:%~2"=="diagnose:-" set "KELTER_COLLECTOR=-XX:+UseSerialGC -Xmn64m"
if /i "%~1"=="diagnose" if exist "%~2\" set "KELTER_COLLECTOR=-XX:+UseSerialGC -Xmn64m"
set "KELTER_FLAGS=%KELTER_COMPILER% %KELTER_COLLECTOR% -XX:-UsePerfData -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -XX:+DisplayVMOutputToStderr -Dsun.reflect.inflationThreshold=2147483647 -Dguice_include_stack_traces=OFF -Dguice_bytecode_gen_option=DISABLED"

if /i "%KELTER_RUNTIME%"=="system" goto system
if not exist "%KELTER_HOME_DIR%\runtime\bin\java.exe" goto system
"%KELTER_HOME_DIR%\runtime\bin\java.exe" %KELTER_FLAGS% -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -XX:+VerifySharedSpaces "-Dkelter.home=%KELTER_HOME_DIR%" -m kelter.cli/kelter.cli.Main %*
exit /b %ERRORLEVEL%

:system
for /f "usebackq delims=" %%J in ("%KELTER_HOME_DIR%\lib\jars") do if not exist "%KELTER_HOME_DIR%\lib\%%J" (
  echo kelter: %KELTER_HOME_DIR%\lib\%%J is missing; put Kelter there afresh 1>&2
  exit /b 3
)
set "KELTER_JAVA=java.exe"
if not defined JAVA_HOME goto onpath
set "KELTER_JAVA=%JAVA_HOME%\bin\java.exe"
if exist "%KELTER_JAVA%" goto version
echo kelter: JAVA_HOME is %JAVA_HOME%, but there is no bin\java.exe in it; Java 17 or newer is needed 1>&2
exit /b 3

:onpath
where /q java.exe
if not errorlevel 1 goto version
echo kelter: Java is not on the PATH, and JAVA_HOME is not set; Java 17 or newer is needed 1>&2
exit /b 3

:version
set "KELTER_VERSION="
for /f "tokens=3" %%V in ('""%KELTER_JAVA%" -version 2^>^&1 ^| findstr /i " version ""') do if not defined KELTER_VERSION set "KELTER_VERSION=%%~V"
for /f "tokens=1 delims=.-+" %%M in ("%KELTER_VERSION%") do set "KELTER_MAJOR=%%M"
if not defined KELTER_MAJOR set "KELTER_MAJOR=0"
if %KELTER_MAJOR% GEQ 17 goto run
echo kelter: Java is version %KELTER_VERSION%; Java 17 or newer is needed 1>&2
exit /b 3

:run
"%KELTER_JAVA%" %KELTER_FLAGS% "-Dkelter.home=%KELTER_HOME_DIR%" -p "%KELTER_HOME_DIR%\lib" -m kelter.cli/kelter.cli.Main %*
exit /b %ERRORLEVEL%
