#!/bin/sh
# Starts Kitleaf with the Java it carries; the folder may lie anywhere.
self=$0
case $self in */*) ;; *) self=./$self ;; esac
while [ -L "$self" ]; do
  to=$(readlink "$self")
  case $to in /*) self=$to ;; *) self=${self%/*}/$to ;; esac
done
runtime=${self%/*}/../runtime
exec "$runtime/bin/java" @options@ "-Xmx${KITLEAF_MEMORY:-@memory@}" @main@ "$@"
