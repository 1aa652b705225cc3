/**
 * The cloth plan: which pieces are cut from which cloth, by cuts from edge to edge, and what has to be bought.
 *
 * <p>To be read in this order: {@link kitleaf.sizing.plan.ClothPlanning} walks through it. What there is: {@code Wanted}, {@code Stock},
 * {@code Kerf}, {@code Group} (parted by {@code Grouping}), {@code Shape}. How cloth is cut apart: {@code Block}, {@code Filled},
 * {@code Draft}. The exact plan: {@code Fronts}, {@code Leftovers}, {@code StockTable}, {@code ShopTable},
 * {@code Outcome}, {@code ExactPlan}. The quick one: {@code Guess}, {@code QuickPlan}. What is given: {@code CutOrder}, {@code PlanWriter},
 * and the public records. What all searching counts with: {@code search}.
 */
package kitleaf.sizing.plan;
