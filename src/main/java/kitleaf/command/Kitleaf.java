package kitleaf.command;
public final class Kitleaf { public static void main(String[] a){ } }
