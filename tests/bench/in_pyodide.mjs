// Runs the folder for xlwings' Python inside Excel in Pyodide, the Python for browsers: by hand.
//
//   candlecalc addin excel out
//   npm install pyodide                       in a folder of its own, with this file copied into it
//   node in_pyodide.mjs out/personal XLWINGS  XLWINGS holds the package xlwings; absolute paths
import { loadPyodide } from "pyodide";

const python = await loadPyodide();
process.argv.slice(2, 4).forEach((root, place) => {
  python.FS.mkdir(`/${place}`);
  python.FS.mount(python.FS.filesystems.NODEFS, { root }, `/${place}`);
});
console.log(
  python.runPython(`
import sys
sys.dont_write_bytecode = True
sys.path[:0] = ["/0", "/1"]
import candles
str([
    sys.version.split()[0], sys.platform, sum(name.startswith("CANDLE_") for name in dir(candles)),
    candles.CANDLE_OIL_FOR_WAX(500, 0.08), candles.CANDLE_OIL_FOR_WAX("12 oz", "8%"),
    candles.CANDLE_OIL_FOR_WAX(500, 8), candles.CANDLE_WHY("oil_for_wax", 500, 8),
])
`),
);
