"""A small plan as a therapist would write it, and changes to it."""

from __future__ import annotations

import json
from typing import Any

TEXT = """{
  "format": "turnpost-plan",
  "format_version": 1,
  "plan_id": "plan-7",
  "person": "P-07",
  "starts_on": "2026-01-05",
  "affected_side": "right",
  "kind_of_loss": "chronic",
  "words": "Little and often.",
  "neck_limit_deg": {"yaw": 30, "pitch": 20},
  "emergency_number": "+44 112",
  "clearance": [{"item": "Examined.", "cleared": true}],
  "entries": [
    {
      "entry_id": "turns",
      "exercise": "turns-on-target",
      "repetitions": 12,
      "tempo_bpm": [60, 90],
      "amplitude_deg": [10, 15],
      "ladder": [{"from_week": 2, "tempo_bpm": 80}, {"from_week": 4, "amplitude_deg": [15, 25]}]
    },
    {
      "entry_id": "turns-free",
      "exercise": "turns-on-target",
      "seconds": 45,
      "tempo_bpm": null,
      "unlock_after": {
        "condition": "Clear target in three sessions.",
        "after": "turns",
        "sessions": 3,
        "clear": true
      }
    },
    {
      "entry_id": "corner",
      "exercise": "stand",
      "eyes": "closed",
      "support": "helper",
      "unlock_after": {"condition": "Steady with the eyes open."}
    },
    {
      "entry_id": "nods",
      "exercise": "nods-together"
    }
  ]
}
"""


def changed(path: str, value: Any) -> str:
    """The example with one field set (``entries.2.eyes``), one field a line."""
    data = json.loads(TEXT)
    *way, last = [int(p) if p.isdigit() else p for p in path.split(".")]
    at = data
    for part in way:
        at = at[part]
    at[last] = value
    return json.dumps(data, indent=1)
