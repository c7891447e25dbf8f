# Derives tests/core/fit/growth/survey_figures.h from two data sets that R packages carry. Needs Debian's r-cran-mice and
# r-cran-nlme:
#   Rscript tests/support/derive-survey-figures.R > tests/core/fit/growth/survey_figures.h
# mice::fdgs: heights of the Fifth Dutch Growth Study (2009), 10,030 children (van Buuren).
# nlme::Oxboys: heights of 26 boys of Oxford, nine times over about two years (Harville, Pinheiro and Bates).

dutch <- subset(mice::fdgs, !is.na(hgt))
dutch$year <- round(dutch$age)

cat("// Heights of two surveys, for checks of the stature reference. Derived by\n// tests/support/derive-survey-figures.R.\n")
cat("#pragma once\n\n#include \"core/fit/rider/rider.h\"\n\nnamespace saddlerule::testing {\n\n")
cat("/// Children of the Dutch survey of 2009 by nearest whole year. Millimetres and years.\n")
cat("struct SurveyedHeight {\n    Sex sex;\n    int children;\n    double mean_age;\n    double mean;\n    double sd;\n};\n\n")
cat("// clang-format off\nconstexpr SurveyedHeight dutch_heights[] = {\n")
for (year in 2:17) {
  for (sex in c("boy", "girl")) {
    group <- dutch[dutch$year == year & dutch$sex == sex, ]
    cat(sprintf("    {Sex::%s, %d, %.2f, %.1f, %.1f},\n", sex, nrow(group), mean(group$age),
                10 * mean(group$hgt), 10 * sd(group$hgt)))
  }
}
cat("};\n// clang-format on\n\n")

# Ages of the Oxford boys are centred on 13 years; occasions 1, 5 and 9 lie about a year apart.
boys <- nlme::Oxboys
increment <- function(first, last) {
  rates <- sapply(split(boys, boys$Subject), function(boy) {
    boy <- boy[order(boy$age), ]
    10 * (boy$height[last] - boy$height[first]) / (boy$age[last] - boy$age[first])
  })
  sprintf("    {%.1f, %.1f, %.1f, %.1f},\n", 13 + round(mean(boys$age[boys$Occasion == first])),
          13 + round(mean(boys$age[boys$Occasion == last])), mean(rates), sd(rates))
}
cat("/// Growth of the Oxford boys, millimetres a year.\n")
cat("struct SurveyedGrowth {\n    double from_age;\n    double to_age;\n    double mean;\n    double sd;\n};\n\n")
cat("constexpr SurveyedGrowth oxford_growth[] = {\n", increment(1, 5), increment(5, 9), "};\n\n", sep = "")
cat("} // namespace saddlerule::testing\n")
