"""The column of a dialog."""

from PySide6.QtWidgets import QDialog, QPushButton, QVBoxLayout

from app.look.column import Column
from app.look.filled import filled
from tests.waiting import until


def test_a_dialog_widens_with_what_stands_in_its_column(qtbot):
    dialog = QDialog()
    qtbot.addWidget(dialog)
    button = QPushButton("short", dialog)
    column = Column(filled(QVBoxLayout(), button), "column", dialog)
    filled(QVBoxLayout(dialog), column)
    dialog.resize(200, 200)
    dialog.show()
    assert dialog.width() == 200
    button.setText("a word that is a good deal longer than the dialog is wide at first")
    until(lambda: button.width() >= button.minimumSizeHint().width() and column.viewport().width() >= column.widget().width())
    assert dialog.width() > 200
