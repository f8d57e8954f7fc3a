"""What sessions come to: the figures of a summary and the words for them."""
