"""The languages of the program: catalogues in Qt's own format, one `.ts` (the source) and one `.qm` (compiled) each."""
