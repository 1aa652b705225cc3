@echo off
rem Starts Kitleaf with the Java it carries; the folder may lie anywhere.
setlocal
set "runtime=%~dp0..\runtime"
if not defined KITLEAF_MEMORY set "KITLEAF_MEMORY=@memory@"
"%runtime%\bin\java" @options@ "-Xmx%KITLEAF_MEMORY%" @main@ %*
