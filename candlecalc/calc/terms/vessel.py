"""Words of vessels: inside lengths, each by where it is measured."""

from typing import Annotated

from candlecalc.calc.terms import Density, Fill, Length

InsideDiameter = Annotated[Length, "how far the vessel is across inside"]
InsideHeight = Annotated[Length, "how deep the vessel is inside, up to the brim or the mark"]
TopDiameter = Annotated[Length, "how far it is across inside at the top"]
BottomDiameter = Annotated[Length, "how far it is across inside at the bottom"]
InsideLength = Annotated[Length, "length of the vessel inside"]
InsideWidth = Annotated[Length, "width of the vessel inside"]
WeighedFill = Annotated[Fill, "wax and oil together as they were weighed in the vessel"]
WeighedInDensity = Annotated[Density, "weight of a millilitre of the wax that the fill was weighed with"]
OtherDensity = Annotated[Density, "weight of a millilitre of the other wax, at the same temperature"]
