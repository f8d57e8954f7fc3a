"""Reading clips: every frame, true times, and plain words for what can't be read."""

from __future__ import annotations

import os
import struct
import subprocess
import sys
import wave
from pathlib import Path

import numpy as np
import pytest

from tests.vision.clip_files import HEIGHT_PX, WIDTH_PX, write_clip, write_matroska
from tests.vision.fakes import number_in
from tracker.errors import InputError
from tracker.vision.clips import FrameTimes, open_clip


@pytest.mark.parametrize(
    ("name", "fourcc"), [("a.mp4", "mp4v"), ("a.avi", "MJPG"), ("a.mkv", "MJPG")]
)
def test_every_frame_in_order_with_its_time(tmp_path: Path, name: str, fourcc: str) -> None:
    path = write_clip(tmp_path / name, 75, 25.0, fourcc)
    with open_clip(path) as clip:
        frames = list(clip)
        assert (clip.info.width_px, clip.info.height_px) == (WIDTH_PX, HEIGHT_PX)
        assert clip.info.rate_hz == pytest.approx(25.0)
        assert clip.info.duration_s == pytest.approx(3.0, abs=0.05)
        assert clip.info.frame_count in (75, None)
        assert not clip.truncated and clip.end_note == "" and clip.replaced_times == 0
        assert clip.frames_read == 75
        assert clip.read() is None
    assert [f.index for f in frames] == list(range(75))
    assert [number_in(f.image) for f in frames] == list(range(75))
    assert np.allclose([f.time_s for f in frames], np.arange(75) / 25.0, atol=6e-4)
    assert frames[0].image.dtype == np.uint8 and frames[0].image.shape == (120, 160, 3)


def test_uneven_times_are_kept_and_begin_at_zero(tmp_path: Path) -> None:
    steps = np.random.default_rng(1).integers(12, 180, 59)
    times = 5000 + np.concatenate([[0], np.cumsum(steps)])
    with open_clip(write_matroska(tmp_path / "uneven.mkv", times.tolist())) as clip:
        frames = list(clip)
    assert np.allclose([f.time_s for f in frames], (times - 5000) / 1000, atol=1e-9)
    assert [number_in(f.image) for f in frames] == list(range(60))


def test_live_recording_without_lengths_is_read_whole(tmp_path: Path) -> None:
    times = list(range(0, 2000, 50))
    with open_clip(write_matroska(tmp_path / "live.webm", times, live=True)) as clip:
        assert len(list(clip)) == 40
        assert not clip.truncated and clip.info.frame_count is None


def test_stamps_that_stand_still_or_go_back_still_rise(tmp_path: Path) -> None:
    times = [0, 40, 40, 40, 30, 200, 240]
    with open_clip(write_matroska(tmp_path / "broken.mkv", times)) as clip:
        got = [f.time_s for f in clip]
        assert clip.replaced_times == 3
    assert np.all(np.diff(got) > 0)
    assert got[-2:] == pytest.approx([0.2, 0.24])


def test_missing_stamps_fall_back_to_the_rate() -> None:
    times = FrameTimes(25.0)
    got = [times.next(stamp) for stamp in (float("nan"), 0.0, 0.0, -3.0, float("nan"))]
    assert got == pytest.approx([0, 0.04, 0.08, 0.12, 0.16])


def test_absurd_jump_forward_does_not_spoil_the_rest() -> None:
    times = FrameTimes(20.0, duration_s=1.0)
    got = [times.next(stamp) for stamp in (10.0, 10.05, 95443.7, 10.15, 10.2)]
    assert got == pytest.approx([0, 0.05, 0.10, 0.15, 0.2])


def test_clip_that_breaks_off_gives_what_it_has_and_says_so(tmp_path: Path) -> None:
    whole = write_clip(tmp_path / "whole.avi", 60, 30.0, "MJPG")
    data = whole.read_bytes()
    path = tmp_path / "cut.avi"
    path.write_bytes(data[: len(data) // 2])
    with open_clip(path) as clip:
        frames = list(clip)
        assert 20 <= len(frames) <= 31
        assert clip.truncated
        assert f"breaks off after {frames[-1].time_s:.1f} s" in clip.end_note
    assert [number_in(f.image) for f in frames[:-1]] == list(range(len(frames) - 1))


def _mp4_with_index_first(path: Path) -> bytes:
    """A clip as it is made for the web: its index before its pictures."""
    data = write_clip(path, 60).read_bytes()
    boxes, at = {}, 0
    while at < len(data):
        length = struct.unpack(">I", data[at : at + 4])[0]
        boxes[data[at + 4 : at + 8]] = data[at : at + length]
        at += length
    index = bytearray(boxes[b"moov"])
    places = index.index(b"stco") + 4
    count = struct.unpack(">I", index[places + 4 : places + 8])[0]
    for k in range(count):
        p = places + 8 + 4 * k
        old = struct.unpack(">I", index[p : p + 4])[0]
        index[p : p + 4] = struct.pack(">I", old + len(index))
    rest = b"".join(box for name, box in boxes.items() if name not in (b"ftyp", b"moov"))
    return boxes[b"ftyp"] + bytes(index) + rest


def test_truncated_mp4_with_its_index_first(tmp_path: Path) -> None:
    data = _mp4_with_index_first(tmp_path / "plain.mp4")
    (tmp_path / "web.mp4").write_bytes(data)
    with open_clip(tmp_path / "web.mp4") as clip:
        assert len(list(clip)) == 60 and not clip.truncated
    (tmp_path / "cut.mp4").write_bytes(data[: len(data) * 2 // 3])
    with open_clip(tmp_path / "cut.mp4") as clip:
        assert 10 < len(list(clip)) < 60
        assert clip.truncated and clip.info.frame_count == 60


def test_frames_lost_in_the_middle_of_a_whole_file_are_noticed(tmp_path: Path) -> None:
    data = bytearray(_mp4_with_index_first(tmp_path / "plain.mp4"))
    data[len(data) * 3 // 5 :] = bytes(len(data) - len(data) * 3 // 5)
    struct.pack_into(">I", data, bytes(data).index(b"mdat") - 4, 0)
    (tmp_path / "holed.mp4").write_bytes(data)
    with open_clip(tmp_path / "holed.mp4") as clip:
        n = len(list(clip))
        assert n < 57
        assert clip.truncated


def test_turned_phone_picture_is_set_upright(tmp_path: Path) -> None:
    path = write_clip(tmp_path / "phone.mp4", 5)
    data = bytearray(path.read_bytes())
    # The track header's matrix; a quarter turn clockwise is (0, 1, -1, 0) in its corner.
    place = data.index(b"tkhd") + 4 + 40
    struct.pack_into(">9i", data, place, 0, 65536, 0, -65536, 0, 0, 0, 0, 1 << 30)
    path.write_bytes(data)
    with open_clip(path) as clip:
        frame = clip.read()
        assert frame is not None
        assert (clip.info.width_px, clip.info.height_px) == (HEIGHT_PX, WIDTH_PX)
        assert frame.image.shape == (WIDTH_PX, HEIGHT_PX, 3)


@pytest.mark.parametrize("to_s", [0.0, 0.5, 2.0, 9.0, 18.0])
def test_skipping_reaches_the_right_frame(tmp_path: Path, to_s: float) -> None:
    path = write_clip(tmp_path / "long.mp4", 600, 30.0)
    with open_clip(path) as clip:
        clip.skip_to(to_s)
        frame = clip.read()
        rest = list(clip)
        assert frame is not None and frame.time_s == pytest.approx(to_s, abs=1e-3)
        assert frame.index == round(to_s * 30)
        assert number_in(frame.image) == frame.index % 256
        assert len(rest) == 599 - frame.index
        assert not clip.truncated


def test_skipping_past_the_end_ends(tmp_path: Path) -> None:
    with open_clip(write_clip(tmp_path / "short.mp4", 20)) as clip:
        clip.skip_to(100.0)
        assert clip.read() is None


def _bad_files(folder: Path) -> dict[str, tuple[Path, str]]:
    """Every kind of file that is no usable clip, with a part of what must be said."""
    good = write_clip(folder / "good.mp4", 30)
    data = good.read_bytes()

    def made(name: str, content: bytes) -> Path:
        (folder / name).write_bytes(content)
        return folder / name

    with wave.open(str(folder / "sound.wav"), "wb") as sound:
        sound.setparams((1, 2, 8000, 0, "NONE", ""))
        sound.writeframes(bytes(16000))
    return {
        "missing": (folder / "nothing.mp4", "no such file"),
        "folder": (folder, "is a folder"),
        "empty": (made("empty.mp4", b""), "is empty"),
        "text": (made("text.mp4", b"not a clip at all\n" * 99), "not a video clip"),
        "zeros": (made("zeros.mp4", bytes(5000)), "not a video clip"),
        "playlist": (
            made("list.m3u8", b"#EXTM3U\n#EXTINF:1,\nhttp://127.0.0.1:9/a.ts\n"),
            "not a video clip",
        ),
        "no index": (made("cut.mp4", data[: data.index(b"moov") - 4]), "breaks off before"),
        "head only": (made("head.mp4", data[:40]), "breaks off before"),
        "cut avi": (
            made("cut.avi", write_clip(folder / "g.avi", 9, 30, "MJPG").read_bytes()[:3000]),
            "breaks off before",
        ),
        "wav": (folder / "sound.wav", "sound but no pictures"),
        "sound in mkv": (write_matroska(folder / "sound.mkv", None), "no picture"),
        "no frames": (write_matroska(folder / "none.mkv", []), "no picture"),
        "null": (Path("a\0b.mp4"), "not a usable file name"),
    }


def test_every_bad_file_gets_one_clear_line(
    tmp_path: Path, capfd: pytest.CaptureFixture[str]
) -> None:
    cases = _bad_files(tmp_path)
    capfd.readouterr()
    for name, (path, words) in cases.items():
        with pytest.raises(InputError) as caught:
            open_clip(path)
        message = str(caught.value)
        assert words in message, name
        assert "\n" not in message and (name == "null" or str(path) in message), name
    assert capfd.readouterr() == ("", "")


@pytest.mark.skipif(os.name != "posix", reason="named pipes of this kind are POSIX")
def test_a_pipe_is_refused_and_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.mp4")
    with pytest.raises(InputError, match="not an ordinary file"):
        open_clip(tmp_path / "pipe.mp4")


def test_damaged_bytes_never_crash_and_say_nothing_on_the_terminal(tmp_path: Path) -> None:
    """In a process of its own: native code that crashed would end this one."""
    script = """
import sys, numpy as np
from pathlib import Path
from tracker.errors import InputError
from tracker.vision.clips import open_clip
rng = np.random.default_rng(7)
for name in sys.argv[1:]:
    data = np.frombuffer(Path(name).read_bytes(), np.uint8)
    for k in range(25):
        bad = data.copy()
        where = rng.integers(0, len(bad), 1 + 8 * k)
        bad[where] = rng.integers(0, 256, len(where))
        target = Path(name).with_name("bad" + Path(name).suffix)
        target.write_bytes(bad[: rng.integers(len(bad) // 2, len(bad))].tobytes())
        try:
            with open_clip(target) as clip:
                times = [f.time_s for f in clip]
                assert times[0] == 0 and (np.diff(times) > 0).all()
        except InputError as error:
            assert "\\n" not in str(error)
"""
    clips = [
        write_clip(tmp_path / "x.mp4", 40),
        write_clip(tmp_path / "x.avi", 40, 30, "MJPG"),
        write_matroska(tmp_path / "x.mkv", list(range(0, 1200, 30))),
    ]
    done = subprocess.run(
        [sys.executable, "-c", script, *map(str, clips)],
        capture_output=True,
        text=True,
        timeout=120,
        cwd=Path(__file__).parents[2],
    )
    assert (done.returncode, done.stdout, done.stderr) == (0, "", "")


def test_a_jump_is_taken_only_to_where_it_was_asked() -> None:
    """Behind the last frame, or past the place asked for, its stamp is no time to trust."""
    times = FrameTimes(25.0)
    assert times.jump(4.0, 5.0) is None
    assert [times.next(stamp) for stamp in (10.0, 10.04)] == pytest.approx([0.0, 0.04])
    for stamp in (float("nan"), 10.04, 9.0, 15.1):
        assert times.jump(stamp, 5.0) is None
    assert times.jump(14.0, 5.0) == pytest.approx(4.0)
    assert times.next(14.04) == pytest.approx(4.04)
    # From the first broken stamp on the frames' times are made up.
    times.next(float("nan"))
    assert times.jump(18.0, 9.0) is None


def test_where_no_jump_can_be_trusted_every_frame_is_gone_through(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(FrameTimes, "jump", lambda *_: None)
    with open_clip(write_clip(tmp_path / "long.mp4", 600, 30.0)) as clip:
        clip.skip_to(18.0)
        frame = clip.read()
    assert frame is not None and frame.index == 540 and number_in(frame.image) == 540 % 256
    assert frame.time_s == pytest.approx(18.0, abs=1e-3)


def test_a_frame_that_cannot_be_decoded_is_passed_over(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with open_clip(write_clip(tmp_path / "a.mp4", 20, 30.0)) as clip:
        whole = clip._retrieve
        left_out = iter([False, True, True, False])
        monkeypatch.setattr(clip, "_retrieve", lambda: whole() if not next(left_out, 0) else None)
        found = [(number_in(f.image), f.time_s) for f in clip][:4]
    assert [n for n, _ in found] == [0, 1, 4, 5]
    assert [t for _, t in found] == pytest.approx([0.0, 1 / 30, 4 / 30, 5 / 30], abs=1e-3)
    with open_clip(write_clip(tmp_path / "b.mp4", 20)) as clip:
        monkeypatch.setattr(clip, "_retrieve", lambda: None)
        clip.skip_to(0.3)
        assert clip.read() is None
