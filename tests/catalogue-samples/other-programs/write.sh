#!/usr/bin/env bash
# Writes the tables beside it: list.json as other programs write it. Run by hand where a program is newer; the files are
# committed, with the versions that wrote them in versions.txt.
#   tests/catalogue-samples/other-programs/write.sh
# Needs libreoffice-calc-nogui and python3 from Debian, and the packages of tests/package.json.
set -euo pipefail
cd "$(dirname "$0")"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

# The rows as people would type them, and from them Python's csv module and PapaParse.
python3 write_with_python.py
node write-with-papaparse.mjs

# LibreOffice opens one of them and saves it again. The filter's tokens: separator, quote, character set (76 is UTF-8,
# 1 Windows-1252, 65535 UTF-16), first line, columns' formats (2 is text), language, quote all texts, detect numbers.
office() { soffice "-env:UserInstallation=file://$work/profile" --headless --norestore "$@" >/dev/null 2>&1; }
texts=$(seq -s/ 1 20 | sed 's#\([0-9]*\)#\1/2#g')
office "--infilter=Text - txt - csv (StarCalc):44,34,76,1,$texts" --convert-to ods --outdir "$work" python-excel.csv
save() { # NAME SEPARATOR CHARACTER-SET QUOTE-ALL
  office --convert-to "csv:Text - txt - csv (StarCalc):$2,34,$3,1,,0,$4,true,false" --outdir "$work" "$work/python-excel.ods"
  mv "$work/python-excel.csv" "libreoffice-$1.csv"
}
save comma 44 76 false
save semicolon-quoted 59 76 true
save tab 9 76 false
save utf16-tab 9 65535 false
save windows-1252-semicolon 59 1 false

{
  soffice --version 2>/dev/null | head -n 1
  python3 --version
  echo "PapaParse $(node -p 'require("../../node_modules/papaparse/package.json").version')"
} >versions.txt
