"""What the declarations say, written out: in the terminal, as a page, as data, as types."""
