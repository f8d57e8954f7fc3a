"""One file each way between patient and therapist: plans out, sessions in, encrypted."""
