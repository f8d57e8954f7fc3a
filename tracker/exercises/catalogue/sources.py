"""Where the usual doses, ranges and rules come from, named as the therapist reads them."""

from __future__ import annotations

COMMON = "common practice"
TWENTY_EACH = "a geriatric text's variant of the Cawthorne-Cooksey set, 20 times each"
TWENTY_REACHES = f"{TWENTY_EACH}; ten with each arm is common practice"
FINGER_DISTANCE = (
    "Cawthorne-Cooksey set: a finger between 91 and 30 cm; the dose is common practice"
)
ARM_FREE = "common practice: an arm held out doesn't reach the screen"
BENT_SEEN = "rendered films: from 56 cm whoever sits up half-way is below the picture, from 90 seen"
ROOM_TO_THROW = (
    "common practice, for room above and below; throws in rendered films were counted from there"
)
HEAD_RANGE = "common practice; published handouts name 20 to 45 degrees to each side"
X2_VIEWING = (
    "Schubert MC et al. 2008, J Vestib Res 18:147-157, for the exercise; "
    "the dose is common practice"
)
PURSUIT = (
    "common practice; at most 20 degrees a second, below the 30 from which eyes need jumps to "
    "keep up (encyclopaedic text)"
)
SHAKE_RATE = "Cohen HS group, JoVE 2023, doi:10.3791/65663: head movements cued at 0.3 Hz"
HOLD = "common practice; also the length of a trial in the sensory-interaction balance test"
STAGES = "US CDC STEADI 2017, four-stage balance test: 10 s a stance"
FIVE_STANDS = "Bohannon RW 2006, Percept Mot Skills 103:215: the time of five stands"
CHAIR_30_S = "US CDC STEADI, 30-second chair stand: 43 cm (17 inch) chair, arms crossed"
FLASHES = "WCAG 2.3.1: at most three flashes in any second; the dose is common practice"
GUIDELINE = (
    "Hall CD et al. 2022, J Neurol Phys Ther 46(2):118-177, "
    "doi:10.1097/NPT.0000000000000382, as quoted"
)
LEAFLET = "Mersey Care NHS leaflet 'Dizziness, vertigo, imbalance'"
