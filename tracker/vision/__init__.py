"""Pixels: cameras, clips and face landmarks.

The only rooms that know OpenCV capture and MediaPipe.
"""
