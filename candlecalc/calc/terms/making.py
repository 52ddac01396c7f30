"""Words of batches and costs: shared terms, each argument with a help of its own."""

from typing import Annotated

from candlecalc.calc.terms import (
    Batch,
    Cost,
    Count,
    Density,
    Load,
    LoadBasis,
    Minutes,
    Money,
    Quantity,
    SignedMoney,
    Weight,
)

WaxBasis = Annotated[LoadBasis, "what the wax supplier's highest load is a share of"]
OilBasis = Annotated[LoadBasis, "what the oil supplier's highest load is a share of"]
LoadNow = Annotated[Load, "load that it has now: oil as a share of wax weight (8% is 0.08)"]
LoadWanted = Annotated[Load, "load wanted: oil as a share of wax weight (8% is 0.08)"]
FirstDensity = Annotated[Density, "weight of a millilitre of the first wax, at the temperature it is filled"]
SecondDensity = Annotated[Density, "weight of a millilitre of the second wax, at the temperature it is filled"]
ScaleShows = Annotated[Weight, "the smallest step the scale shows, in any unit, the same for all"]
IntoEach = Annotated[Weight, "what goes into one candle, in any unit, the same for all"]
ThereIs = Annotated[Weight, "what is on hand, in any unit, the same for all"]
CandlesToMake = Annotated[Count, "how many candles to make"]
WholeMelt = Annotated[Weight, "the whole melt, wax and oil, in any unit, the same for all"]
PotHolds = Annotated[Weight, "the most that a pot holds, in any unit, the same for all"]
PotsFull = Annotated[Count, "how many pots are full"]
PartOfEach = Annotated[Weight, "what one candle takes of this part, in any unit, the same for all"]
AllOfEach = Annotated[Weight, "what one candle takes in all, in any unit, the same for all"]
InThePot = Annotated[Weight, "what is melted in this pot, in any unit, the same for all"]
PiecesEach = Annotated[Count, "pieces that one candle takes"]
QuantityNeeded = Annotated[Quantity, "how much is needed"]
QuantityThere = Annotated[Quantity, "how much is on hand"]
PotsToPour = Annotated[Count, "how many pots are to be poured"]
PackShipping = Annotated[Money, "what shipping the pack cost, its part of the order's"]
PackTax = Annotated[Money, "tax on the pack that you cannot claim back"]
ChargeToSplit = Annotated[SignedMoney, "the charge to split, such as shipping; minus for a credit"]
LeftAfterWaste = Annotated[Weight, "what is wanted after waste, in any unit; the answer is in the same unit"]
CameOutGood = Annotated[Count, "how many came out good"]
WereMade = Annotated[Count, "how many were made"]
MinutesForOne = Annotated[Minutes, "working time for one candle"]
MinutesToSetUp = Annotated[Minutes, "working time to set up and clean, once a batch"]
OverheadBudget = Annotated[Money, "budget for overhead over the time"]
MaterialsCost = Annotated[Money, "what the materials cost, waste with them"]
PaidLabourCost = Annotated[Money, "what paid help costs; nothing for your own time"]
OverheadCharged = Annotated[Money, "its part of production overhead"]
MakingCost = Annotated[Cost, "making cost: materials, paid help, production overhead"]
OwnTimeCost = Annotated[Money, "your own time at your hourly rate"]
RunningCost = Annotated[Money, "its part of the costs of running: insurance, website, phone"]
CostAtUsual = Annotated[Cost, "what the candle costs in the usual batch"]
SetUpOnce = Annotated[Money, "what setting up once costs"]
UsualBatch = Annotated[Batch, "how many candles are usually made together"]
CostToday = Annotated[Cost, "what it costs today"]
MaterialsInIt = Annotated[Money, "what the materials in that cost"]
CostOfEach = Annotated[Cost, "what one of them costs"]
