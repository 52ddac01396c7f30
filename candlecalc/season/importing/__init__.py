"""Files from elsewhere, read into the tables of a season by a layout that the maker described on Imports."""
