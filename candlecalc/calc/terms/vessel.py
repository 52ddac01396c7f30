"""Words of vessels: inside lengths, each by where it is measured."""

from typing import Annotated

from candlecalc.calc.terms import Length

InsideDiameter = Annotated[Length, "how far the vessel is across inside"]
InsideHeight = Annotated[Length, "how deep the vessel is inside, up to the brim or the mark"]
TopDiameter = Annotated[Length, "how far it is across inside at the top"]
BottomDiameter = Annotated[Length, "how far it is across inside at the bottom"]
InsideLength = Annotated[Length, "length of the vessel inside"]
InsideWidth = Annotated[Length, "width of the vessel inside"]
