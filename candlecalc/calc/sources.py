"""Where the formulas come from, each written once."""

PRACTICE = "common practice, no source"
ALGEBRA = "algebra from the definitions"
GEOMETRY = "elementary geometry; OpenStax, Prealgebra 2e (cylinder) and Calculus (solids cut across)"
WATER = (
    "water's density: Tanaka et al., Metrologia 38 (2001) 301, from memory, checked against IAPWS-95; "
    "weighing in air: the buoyancy correction of the conventional mass (air 0.0012, weights 8.0 g/ml), from memory"
)
MASS_PERCENT = "percent by mass: OpenStax, Chemistry 2e, section on other units for solution concentrations"
MIXING = "mass balance of a mixture; OpenStax, Intermediate Algebra 2e, mixture applications"
RESOLUTION = "limit of error of half a step for each reading; GUM, from memory"
BLEND_LIMIT = "derived: a material's share in an oil is at most its own limit over that oil's certified limit"
LANDED_COST = (
    "cost of purchase, freight and tax not recovered in it: IAS 2, from summaries; OpenStax, Financial Accounting 6"
)
LARGEST_REMAINDER = "largest remainder (Hamilton): OpenStax, Contemporary Mathematics 11.4"
JOB_COST = "job cost: OpenStax, Managerial Accounting, chapter 4"
OVERHEAD = "predetermined overhead rate: OpenStax, Managerial Accounting 4.4"
BREAK_EVEN = "cost, volume and profit: OpenStax, Managerial Accounting, chapter 3"
MARKUP = "markup, discount and sales tax: OpenStax, Contemporary Mathematics 6.2"
