"""What is heard: beats as sound, and the voice."""
