"""What a built program is really made of: the libraries that its file names and those that they name in turn,
the static archives that were linked into it, and the packages whose headers its objects were compiled with.
Read from the program's file, from Ninja's files and from Debian's lists of files; nothing is taken from a list of ours."""
import functools
import os
import pathlib
import re
import subprocess

# Numbers and layouts of system calls; their licence puts no bounds on programs that use them (Linux-syscall-note).
NOT_A_PART = {"linux"}


def said(*command):
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout


@functools.cache
def owners():
    """Debian's packages by the files that they installed."""
    found = {}
    for file in pathlib.Path("/var/lib/dpkg/info").glob("*.list"):
        package = file.name[:-len(".list")].split(":")[0]
        for line in file.read_text(encoding="utf-8", errors="replace").splitlines():
            found.setdefault(line, package)
    return found


@functools.cache
def sources():
    """Of each installed package its source package, the version of that, and its own."""
    table = {}
    for line in said("dpkg-query", "-W", "-f", "${Package}\t${source:Package}\t${source:Version}\t${Version}\n").splitlines():
        package, source, source_version, version = line.split("\t")
        table.setdefault(package, (source, source_version, version))
    return table


def package_of(path):
    real = os.path.realpath(path)
    for name in (path, real, real.removeprefix("/usr"), "/usr" + real):
        if name in owners():
            return owners()[name]
    return None


def needed_by(program):
    """Names of the libraries that the program's file names itself."""
    return set(re.findall(r"\(NEEDED\)\s+Shared library: \[([^\]]+)\]", said("readelf", "-d", str(program))))


def resolved(program):
    """Library name to file, of everything that is loaded with the program."""
    return dict(re.findall(r"^\s*(\S+) => (/\S+)", said("ldd", str(program)), re.M))


@functools.cache
def edges(build):
    """Outputs to inputs, of Ninja's file."""
    text = (pathlib.Path(build) / "build.ninja").read_text(encoding="utf-8").replace("$\n", "")
    table = {}
    for line in text.splitlines():
        match = re.match(r"build ((?:[^:$]|\$.)+): (\S+) ?(.*)", line)
        if match:
            outputs = match[1].split("|")[0].split()
            inputs = match[3].split("||")[0].replace("|", " ").split()
            for output in outputs:
                table[output] = inputs
    return table


def link_closure(build, program):
    """The objects and archives that may have gone into a program: its own, and those of our own archives."""
    objects, archives, waiting, seen = set(), set(), [program], set()
    while waiting:
        output = waiting.pop()
        if output in seen:
            continue
        seen.add(output)
        for name in edges(build).get(output, []):
            if name.endswith(".o"):
                objects.add(name)
            elif name.endswith(".a"):
                archives.add(name)
                waiting.append(name)
    return objects, archives


def headers_of(build, objects):
    found, inside = set(), False
    for line in said("ninja", "-C", str(build), "-t", "deps").splitlines():
        if line and not line.startswith(" "):
            inside = line.split(":")[0] in objects
        elif inside:
            path = line.strip()
            if path.startswith("/usr/"):
                found.add(os.path.normpath(path))
    return found


def parts_of(build, program):
    """-> ({source package: "shared" | "static" | "headers"}, {source packages reached through others}, {fonts are in it})"""
    build = str(build)
    file = pathlib.Path(build) / "bin" / program
    objects, archives = link_closure(build, f"bin/{program}")
    if not objects:
        raise SystemExit(f"{program} is not in {build}/build.ninja")
    kinds, unknown = {}, []

    def note(path, kind):
        package = package_of(path)
        if package is None:
            unknown.append(path)
        elif (source := sources()[package][0]) not in NOT_A_PART:
            kinds.setdefault(source, kind)

    libraries = resolved(file)
    direct = needed_by(file)
    for archive in sorted(archives):
        if archive.startswith("/"):
            note(archive, "static")
    for name in sorted(direct):
        if name in libraries:
            note(libraries[name], "shared")
        elif not name.startswith("ld-linux"):
            unknown.append(name)
    for header in sorted(headers_of(build, objects)):
        note(header, "headers")
    if unknown:
        raise SystemExit("of no Debian package: " + ", ".join(unknown[:5]))
    indirect = {sources()[package_of(path)][0] for name, path in libraries.items() if name not in direct} - set(kinds)
    fonts = any(archive.endswith("libebbline_fonts.a") for archive in archives)
    return kinds, indirect, fonts
