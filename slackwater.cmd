@echo off
rem Slackwater's launcher: builds on first use, then runs the program. Needs a JDK (17 or later) and Maven.
setlocal
set "here=%~dp0"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -version >nul 2>nul
if errorlevel 1 (
    echo slackwater needs Java 17 or later, and no java was found. Install a JDK. 1>&2
    exit /b 2
)
if not exist "%here%viewer\target\slackwater-viewer.jar" (
    where mvn >nul 2>nul
    if errorlevel 1 (
        echo slackwater is not built yet, and no mvn was found. Install Maven. 1>&2
        exit /b 2
    )
    echo Building slackwater, for the first use ... 1>&2
    call mvn -B -q -f "%here%pom.xml" -Dmaven.test.skip=true package
    if errorlevel 1 exit /b 1
)
set "memory="
if defined SLACKWATER_MEMORY set "memory=-Xmx%SLACKWATER_MEMORY%"
"%java%" --add-modules jdk.incubator.vector -Djava.awt.headless=true %memory% ^
    -jar "%here%viewer\target\slackwater-viewer.jar" %*
exit /b %errorlevel%
