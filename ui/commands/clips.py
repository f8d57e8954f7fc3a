"""``turnpost clips``: the sample clips that come along, and new ones with their truth."""

from __future__ import annotations

import argparse
from pathlib import Path

import sample_clips
from tracker.errors import InputError, RunError, system_reason

HOW_TO_GET = "'python3 ui/start.py clips render ...' installs what is missing"


def add_parser(sub: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command to the command line."""
    parser = sub.add_parser(
        "clips",
        help="list the sample clips; render new ones with their truth",
        description="Sample clips show a rendered head whose every angle is known.",
    )
    what = parser.add_subparsers(dest="what", metavar="WHAT", required=True)
    listing = what.add_parser("list", help="list the clips and scenarios that come along")
    listing.set_defaults(run=run_list)
    render = what.add_parser(
        "render",
        help="render scenarios into clips",
        description="Writes NAME.mp4, NAME.truth.csv, NAME.stage.json and NAME.events.json for "
        "each scenario. Takes about a second for two of the clip.",
    )
    render.add_argument(
        "scenarios",
        nargs="+",
        metavar="SCENARIO",
        help="a scenario file, or the name of one that comes along",
    )
    render.add_argument("--out", type=Path, required=True, metavar="DIR", help="where to write")
    render.set_defaults(run=run_render)


def run_list(args: argparse.Namespace) -> int:
    """Print each clip's path, then the names of the scenarios."""
    del args
    print("Clips:")
    for clip in sample_clips.shipped():
        print(f"  {clip}")
    print("Scenarios:")
    for scenario in sample_clips.scenarios():
        print(f"  {scenario.stem}")
    return 0


def find_scenario(named: str) -> Path:
    """Path of a scenario that is named by its file or, if it comes along, by its name.

    Raises
    ------
    InputError
        If there is none; names those that come along.
    """
    path = Path(named)
    if path.is_file():
        return path
    known = {scenario.stem: scenario for scenario in sample_clips.scenarios()}
    if named in known:
        return known[named]
    raise InputError(f"{named}: no such scenario; these come along: {', '.join(known)}")


def run_render(args: argparse.Namespace) -> int:
    """Render each scenario; print the path of each clip when it is done."""
    paths = [find_scenario(named) for named in args.scenarios]
    try:
        import av  # noqa: F401  asked for here, before minutes of drawing

        from sample_clips.mesh import MissingMeshError
        from sample_clips.render import make_score, render_scenario
        from sample_clips.scenario import ScenarioError, load_scenario
    except ModuleNotFoundError as error:
        raise RunError(f"rendering needs the package {error.name}; {HOW_TO_GET}") from error
    try:
        scenarios = [load_scenario(path) for path in paths]
        for scenario in scenarios:
            make_score(scenario)  # an unknown head shows before anything is drawn
        for scenario in scenarios:
            print(render_scenario(scenario, args.out), flush=True)
    except ScenarioError as error:
        raise InputError(str(error)) from error
    except MissingMeshError as error:
        raise RunError(str(error)) from error
    except OSError as error:
        raise RunError(f"{args.out}: {system_reason(error)}") from error
    return 0
