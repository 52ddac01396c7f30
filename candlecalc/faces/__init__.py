"""The functions where makers already work: in Excel, in LibreOffice Calc, as names that need nothing installed."""
