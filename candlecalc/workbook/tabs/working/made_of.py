"""What a piece is made of: the one list of its parts, for every tab that costs, weighs or counts them.

A part that Recipes names has a column on Workings (its row on Materials) and one on Amounts (how much of it).
Both stand side by side in the order of `PARTS`, so that a recipe can be read across by a part's number. What else
goes with a piece is a line of Extra parts: its product's row, its material's row, how many, and which line of its
product it is.
"""

# Part -> the Workings column that holds its row on Materials. Weights first, then pieces.
WEIGHED = {
    "wax_first": "wax_row",
    "wax_second": "wax_second_row",
    "oil_first": "oil_first_row",
    "oil_second": "oil_second_row",
    "oil_third": "oil_third_row",
    "dye": "dye_row",
}
COUNTED = {"vessel": "bought_row", "lid": "lid_row", "wick": "wick_row", "label": "label_row", "packing": "packing_row"}
PARTS = {**WEIGHED, **COUNTED}
HEADS = {
    "wax_first": "Wax", "wax_second": "Second wax", "oil_first": "Oil 1", "oil_second": "Oil 2", "oil_third": "Oil 3",
    "dye": "Dye", "vessel": "Vessel", "lid": "Lid", "wick": "Wick", "label": "Label", "packing": "Packing",
}  # fmt: skip
