"""The set-up of a person, a camera and a screen: what is asked, what is told, what is kept."""
