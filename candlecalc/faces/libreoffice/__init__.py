"""LibreOffice, as an extension."""
