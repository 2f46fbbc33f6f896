@echo off
rem Build Rickyard if needed (the build itself skips what has not changed), then run it.
setlocal
set "root=%~dp0"
where dotnet >nul 2>nul
if errorlevel 1 (
    echo rickyard: needs the .NET 10 SDK ^(the command 'dotnet'^), which was not found. Install it, then run this again. 1>&2
    exit /b 127
)
dotnet build "%root%src\Rickyard\Rickyard.csproj" -c Release --nologo -v quiet 1>&2
if errorlevel 1 exit /b 1
dotnet "%root%artifacts\bin\Rickyard\release\rickyard.dll" %*
exit /b %errorlevel%
