#!/usr/bin/env python3
"""Measures the packaged program against OpenPDF alone drawing the same marks.

    mvn -q -Pdist -DskipTests package && python3 src/bench/bench.py [--runs 10] [--labels 30,1000,10000,100000] [--json FILE]

Every figure is a whole process from start to end, on a warm file cache; the programs take turns, so that what else the machine
does falls on all of them. "bare" is OpenPDF with its marks ready in a file (see Replay.java), run by plain java; "bare, tuned" is
the same with the collector, the compiler and a class archive such as the packaged program has. Needs Python 3.8, a JDK and Linux or
macOS. The machine should be idle; the load is noted in the report.
"""
import argparse
import glob
import json
import os
import platform
import shutil
import statistics
import subprocess
import sys
import tempfile
import time

PROJECT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
KITLEAF = os.path.join(PROJECT, "target", "dist", "kitleaf", "bin", "kitleaf")
FONTS = os.path.join(PROJECT, "fonts")
TUNED = ["-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"]
SYMBOLS = "●▲■◆★+×"


def basket(folder, labels):
    """Pieces of thirty threads each, so many as make the number of labels, on printed stock of thirty a sheet."""
    os.makedirs(os.path.join(folder, "pieces"))
    with open(os.path.join(folder, "basket.yaml"), "w", encoding="utf-8") as out:
        out.write("title: Saltmarsh evening table\nlabel-stock: {columns: 3, rows: 10, label: 63 mm x 25 mm, "
                  "first: 8 mm x 15 mm, pitch: 65 mm x 26 mm}\n")
    for piece in range((labels + 29) // 30):
        with open(os.path.join(folder, "pieces", f"band-{piece:05d}.yaml"), "w", encoding="utf-8") as out:
            out.write(f"piece: Breakwater band {piece + 1}\ndesigner: Ottoline Marsh\nstitches: 140 x 210\n"
                      "cloth: {name: Sea-mist, kind: linen, count: 36, over: 2}\nmargin: 3 in\nthreads:\n")
            for t in range(min(30, labels - 30 * piece)):
                colour = "".join(f"{(step * t + shift * piece) % 256:02x}" for step, shift in ((37, 1), (91, 7), (53, 13)))
                out.write(f'  - {{code: K{t + 1}, name: Ebb grey {t + 1}, colour: "#{colour}", symbol: "{SYMBOLS[t % 7]}", '
                          f"strands: {1 + t % 2}, stitches: {{cross: {200 + 17 * t}}}}}\n")


def openpdf():
    """The jar the program was built with."""
    repository = os.environ.get("MAVEN_REPOSITORY", os.path.expanduser("~/.m2/repository"))
    with open(os.path.join(PROJECT, "pom.xml"), encoding="utf-8") as pom:
        version = pom.read().split("<openpdf.version>")[1].split("<")[0]
    jar = os.path.join(repository, "com/github/librepdf/openpdf", version, f"openpdf-{version}.jar")
    if not os.path.exists(jar):
        sys.exit(f"there is no {jar}; build the project first, or say where Maven keeps its jars with MAVEN_REPOSITORY")
    return jar


def run(command):
    """Wall seconds, processor seconds and peak resident kilobytes of one process."""
    start = time.perf_counter()
    process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE)
    said = process.stderr.read().decode(errors="replace")
    _, status, usage = os.wait4(process.pid, 0)
    wall = time.perf_counter() - start
    process.returncode = os.waitstatus_to_exitcode(status) if hasattr(os, "waitstatus_to_exitcode") else status
    if process.returncode != 0:
        sys.exit(" ".join(command) + f" ended with {process.returncode}\n{said}")
    peak = usage.ru_maxrss / (1024 if platform.system() == "Darwin" else 1)
    return wall, usage.ru_utime + usage.ru_stime, peak


def measure(contenders, runs):
    """Runs each contender once unmeasured, then all of them by turns."""
    taken = {name: [] for name in contenders}
    for number in range(runs + 1):
        for name, command in contenders.items():
            one = run(command)
            if number > 0:
                taken[name].append(one)
    return {name: {"wall-median": statistics.median(t[0] for t in all_of), "wall-least": min(t[0] for t in all_of),
                   "cpu-median": statistics.median(t[1] for t in all_of), "cpu-least": min(t[1] for t in all_of),
                   "peak-mb": max(t[2] for t in all_of) / 1024} for name, all_of in taken.items()}


def processor():
    try:
        with open("/proc/cpuinfo", encoding="utf-8") as info:
            return next(line.split(":")[1].strip() for line in info if line.startswith("model name"))
    except (OSError, StopIteration):
        return platform.processor() or platform.machine()


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("--runs", type=int, default=10, help="measured runs of each, 10 if left out")
    options.add_argument("--labels", default="30,1000,10000,100000", help="numbers of labels, with commas between")
    options.add_argument("--no-basket", action="store_true", help="leave the example basket out")
    options.add_argument("--json", help="write the figures to this file too")
    asked = options.parse_args()
    if not os.path.exists(KITLEAF):
        sys.exit("there is no packaged program; run mvn -q -Pdist -DskipTests package")
    work = tempfile.mkdtemp(prefix="kitleaf-bench-")
    try:
        report(asked, work)
    finally:
        shutil.rmtree(work)


def report(asked, work):
    jar = openpdf()
    classes = os.path.join(work, "classes")
    subprocess.run(["javac", "-cp", jar, "-d", classes] + glob.glob(os.path.join(PROJECT, "src/bench/*.java")), check=True)
    path = jar + os.pathsep + classes
    if os.path.isdir(os.path.join(work, "classes")):
        # A class archive takes jars only.
        packed = os.path.join(work, "bench.jar")
        subprocess.run(["jar", "--create", "--file", packed, "-C", classes, "."], check=True)
        path = jar + os.pathsep + packed

    jobs = {}
    if not asked.no_basket:
        jobs["example basket"] = (["print", os.path.join(PROJECT, "examples", "harbour")], 0)
    for labels in [int(number) for number in asked.labels.split(",") if number]:
        folder = os.path.join(work, f"basket-{labels}")
        basket(folder, labels)
        jobs[f"{labels:,} labels"] = (["print", folder, "--only", "bobbin-labels"], labels)

    version = subprocess.run(["java", "-version"], capture_output=True, text=True, check=True).stderr.splitlines()[0]
    with open(os.path.join(PROJECT, "target", "dist", "kitleaf", "runtime", "release"), encoding="utf-8") as release:
        packed = next(line.split('"')[1] for line in release if line.startswith("JAVA_VERSION="))
    print(f"{processor()}, {os.cpu_count()} processors, {platform.system()}; bare runs on {version}, kitleaf on its own Java {packed}")
    print(f"load before {os.getloadavg()[0]:.1f}; medians of {asked.runs} runs, least in brackets; peak is the most of all runs\n")
    print(f"{'':16}{'':14}{'wall s':>16}{'processor s':>16}{'peak MB':>9}{'wall ratio':>12}{'cpu ratio':>11}")
    figures = {}
    archive = os.path.join(work, "bare.jsa")
    for name, (arguments, labels) in jobs.items():
        out = os.path.join(work, "out")
        shutil.rmtree(out, ignore_errors=True)
        run([KITLEAF] + arguments + ["--out", out])
        marks = []
        for pdf in sorted(glob.glob(os.path.join(out, "*.pdf"))):
            subprocess.run(["java", "-cp", path, "Record", pdf, pdf + ".marks"], check=True)
            marks += [pdf + ".marks", pdf + ".bare.pdf"]
        bare = ["-cp", path, "Replay", FONTS] + marks
        if not os.path.exists(archive):
            run(["java"] + TUNED + ["-XX:ArchiveClassesAtExit=" + archive] + bare)
        result = measure({
            "kitleaf": [KITLEAF] + arguments + ["--out", out],
            "bare": ["java"] + bare,
            "bare, tuned": ["java"] + TUNED + ["-XX:SharedArchiveFile=" + archive] + bare,
        }, asked.runs)
        figures[name] = result
        for contender, f in result.items():
            ratios = "" if contender == "kitleaf" else (
                f"{result['kitleaf']['wall-median'] / f['wall-median']:12.2f}{result['kitleaf']['cpu-median'] / f['cpu-median']:11.2f}")
            wall = f"{f['wall-median']:.3f} ({f['wall-least']:.3f})"
            cpu = f"{f['cpu-median']:.3f} ({f['cpu-least']:.3f})"
            print(f"{name if contender == 'kitleaf' else '':16}{contender:14}{wall:>16}{cpu:>16}{f['peak-mb']:9.0f}{ratios}", flush=True)
    print(f"\nload after {os.getloadavg()[0]:.1f}")
    if asked.json:
        with open(asked.json, "w", encoding="utf-8") as out:
            json.dump(figures, out, indent=1)


if __name__ == "__main__":
    main()
