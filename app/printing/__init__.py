"""Paper through the system's printers: correction of stretch, and pages painted at full size."""
