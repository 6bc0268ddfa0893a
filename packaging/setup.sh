# The set-up that start and check share. Sourced with `root` set to the top of the checkout; runs nothing by
# itself. All that it says goes to standard error, so that --json output stays clean.

# Debian keeps ldconfig where the path of ordinary users does not lead.
PATH=$PATH:/usr/sbin:/sbin
venv=$root/.venv
python=$venv/bin/python
constraints=$root/packaging/constraints.txt

say() {
    printf '%s\n' "$*" >&2
}

stop() {
    say "$@"
    exit 2
}

# Prints "library package" for each line of the lists $@ whose library the system's loader does not know.
# A system without ldconfig cannot be asked: nothing is printed, and Qt itself will say what it lacks.
missing_libraries() {
    if [ $# -eq 0 ] || ! command -v ldconfig >/dev/null; then
        return 0
    fi
    ldconfig -p | awk '
        pass == 1 { if ($2 ~ /64/) known[$1] = 1; next }
        /^#/ || NF < 2 || ($1 in known) { next }
        { print $1, $2 }
    ' pass=1 - pass=2 "$@"
}

# Prints the first Python that is new enough and can make virtual environments; $PYTHON goes before all.
find_python() {
    for candidate in ${PYTHON:+"$PYTHON"} python3 python3.14 python3.13 python3.12 python3.11; do
        if "$candidate" -c 'import sys, ensurepip, venv; sys.exit(sys.version_info < (3, 11))' 2>/dev/null; then
            printf '%s\n' "$candidate"
            return 0
        fi
    done
    return 1
}

# Gets the Debian packages $@, or tells how to.
install_packages() {
    if [ "$(id -u)" -ne 0 ]; then
        if command -v sudo >/dev/null; then
            as_root="sudo apt-get install -y $*"
        else
            as_root="su -c 'apt-get install -y $*'"
        fi
        say "Quailsched needs system packages that only an administrator can install."
        stop "Run this one command, then start again:
    $as_root"
    fi
    say "Installing system packages (once): $*"
    log=$(mktemp)
    if ! {
        apt-get -q update &&
            DEBIAN_FRONTEND=noninteractive apt-get -q install -y --no-install-recommends \
                -o DPkg::Lock::Timeout=300 "$@"
    } </dev/null >"$log" 2>&1; then
        tail -n 15 "$log" >&2
        stop "The system packages could not be installed; apt-get says why above (all of it: $log)."
    fi
    rm -f "$log"
}

# Makes sure of a Python and of the libraries in the lists $@. The variable `have_packages` says whether the
# Python packages stand already; then no other Python is needed.
prepare_system() {
    missing=$(missing_libraries "$@")
    packages=$(printf '%s\n' "$missing" | awk 'NF && !seen[$2]++ { print $2 }')
    if ! $have_packages && ! find_python >/dev/null; then
        packages="python3 python3-venv $packages"
    fi
    if [ -n "$packages" ] && command -v apt-get >/dev/null; then
        # Unquoted: one word a package.
        install_packages $packages
    elif [ -n "$missing" ]; then
        say "Windows and pictures may fail: these system libraries are missing (your system's own packages have them):"
        printf '%s\n' "$missing" | awk '{ print "    " $1 }' >&2
    fi
    if ! $have_packages && ! find_python >/dev/null; then
        stop "Quailsched needs Python 3.11 or newer with its venv module, and none was found. If it stands" \
            "somewhere unusual, name it: PYTHON=/path/to/python3 ./packaging/start"
    fi
}

# Prints what the virtual environment was, or would now be, made from: place, Python, bounds and pins.
fingerprint() {
    printf '%s\n' "$root"
    readlink -f "$python" || :
    cat "$root/pyproject.toml" "$constraints" | cksum
}

# Prints the requirements of pyproject.toml for running (run) or checking (check), one a line.
requirements() {
    "$python" - "$root/pyproject.toml" "$1" <<'PYTHON'
import sys, tomllib

with open(sys.argv[1], "rb") as file:
    project = tomllib.load(file)["project"]
extras = project["optional-dependencies"]["check"] if sys.argv[2] == "check" else []
print(*project["dependencies"], *extras, sep="\n")
PYTHON
}

# Installs the Python packages for $1 (run or check) into .venv, which is made anew unless it only lacks the
# packages for checking.
install_python_packages() {
    if [ "$(cat "$venv/made-for-run" 2>/dev/null)" != "$(fingerprint)" ]; then
        say "Making .venv with the Python packages that Quailsched uses (once, about a minute) ..."
        "$(find_python)" -m venv --clear "$venv" >&2 || stop "The virtual environment $venv could not be made."
    else
        say "Adding the Python packages for the checks to .venv (once) ..."
    fi
    requirements "$1" >"$venv/requirements.txt"
    if ! "$python" -m pip install --quiet --no-input --disable-pip-version-check --only-binary :all: \
        --constraint "$constraints" --requirement "$venv/requirements.txt" </dev/null >&2; then
        stop "The Python packages could not be installed; pip says why above. With a network, try again."
    fi
    # Lets this Python find the program from any directory; nothing of it is copied, so nothing gets stale.
    "$python" - "$root" <<'PYTHON'
import pathlib, sys, sysconfig

pathlib.Path(sysconfig.get_path("purelib"), "quailsched.pth").write_text(sys.argv[1] + "\n")
PYTHON
    fingerprint >"$venv/made-for-run"
    if [ "$1" = check ]; then
        cp "$venv/made-for-run" "$venv/made-for-check"
    fi
}

# prepare run|check LIST...: everything that is missing, and nothing if nothing is.
prepare() {
    purpose=$1
    shift
    have_packages=false
    if [ -x "$python" ] && [ "$(cat "$venv/made-for-$purpose" 2>/dev/null)" = "$(fingerprint)" ]; then
        have_packages=true
    fi
    prepare_system "$@"
    if ! $have_packages; then
        install_python_packages "$purpose"
    fi
}
