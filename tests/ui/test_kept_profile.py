"""The files of kept set-ups: one for each camera and pair of glasses, in a folder of their own."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from calibration.fit import fit_profile
from tests.calibration.conftest import FOV_DEG, SHAPE, observed
from tracker.profile import Profile
from ui import wiring
from ui.ports import CameraChoice

ONE, OTHER = CameraChoice(0, "One", "usb-1"), CameraChoice(1, "Other", "usb-2")


@pytest.fixture(scope="module")
def profile() -> Profile:
    """A person seen at rest for two seconds."""
    observations, steps = observed("turns-good", until_s=2.0)
    return fit_profile(observations, steps[:1], SHAPE, FOV_DEG)[0]


def test_each_camera_and_pair_of_glasses_has_its_own(
    profile: Profile, private_data_folder: Path
) -> None:
    assert wiring.kept_profile(ONE, "none") is None
    wiring.keep_profile(profile, ONE, "none")
    path = wiring.kept_profile(ONE, "none")
    assert path is not None and path.parent == private_data_folder / "profiles"
    assert path.stat().st_mode & 0o077 == 0 and path.parent.stat().st_mode & 0o077 == 0
    assert "One" not in path.name
    assert wiring.kept_profile(ONE, "varifocal") is None
    assert wiring.kept_profile(OTHER, "none") is None
    service = wiring.make_service(ONE, path)
    assert service is not None
    from calibration.profile_file import load_profile

    kept = load_profile(path)
    assert kept.about["camera"] == "One" and kept.about["glasses"] == "none"
    assert np.array_equal(kept.profile.template.values, profile.template.values)
