@echo off
rem Starts Kitleaf with the Java it carries; the folder may lie anywhere.
setlocal
set "runtime=%~dp0..\runtime"
"%runtime%\bin\java" @options@ @main@ %*
