/**
 * Acceptability constants k, standard deviation unknown (s method), one specification limit, by the
 * k form. Columns are acceptance quality limits in percent for normal inspection; tightened
 * inspection uses the column to the left, and the first column is for tightened at 0.10 alone.
 * ↓ leads to the first plan below, whose sample size then holds too (blank in the excerpt read; that the
 * table has arrows there is from memory).
 *
 * Source: ANSI/ASQ Z1.9 table B-1 (read in an excerpt). Values marked ~ were outside that excerpt:
 * computed from the M table of the same standard by k = (1 − 2 β) (n − 1) / √n, with β the M quantile
 * of the symmetric beta distribution with shapes n/2 − 1; good to about 0.01. The code letters are those
 * of Z1.9 (they include I), not those of the attribute tables.
 */
export const VARIABLES_K = `
letter    n  tightest 0.10     0.15     0.25     0.40     0.65     1.0      1.5      2.5      4.0      6.5      10
B         3  ↓        ↓        ↓        ↓        ↓        ↓        ↓        ↓        1.12     0.958    0.765    0.566
C         4  ↓        ↓        ↓        ↓        ↓        ↓        1.45     1.34     1.17     1.01     0.814    0.617
D         5  ↓        ↓        ↓        ↓        ↓        1.65     1.53     1.40     1.24     1.07     0.874    0.675
E         7  ↓        ↓        ↓        2.00     1.88     1.75     1.62     1.50     1.33     1.15     0.955    0.755
F        10  ↓        ↓        2.24     2.11     1.98     1.84     1.72     1.58     1.41     1.23     1.03     0.828
G        15  2.53     2.42     2.32     2.20     2.06     1.91     1.79     1.65     ~1.475   ~1.296   ~1.09    ~0.885
H        20  2.58     2.47     2.36     2.24     2.11     1.96     1.82     1.69     ~1.512   ~1.33    ~1.123   ~0.916
I        25  2.61     2.50     2.40     2.26     2.14     1.98     1.85     1.72     ~1.533   ~1.351   ~1.142   ~0.935
J        35  2.65     2.54     2.45     2.31     2.18     2.03     1.89     1.76     ~1.573   ~1.388   ~1.177   ~0.968
K        50  2.71     2.60     2.50     2.35     2.22     2.08     1.93     1.80     ~1.611   ~1.424   ~1.212   ~1.0
L        75  2.77     2.66     2.55     2.41     2.27     2.12     1.98     1.84     ~1.652   ~1.463   ~1.247   ~1.033
M       100  2.80     2.69     2.58     2.43     2.29     2.14     2.00     1.86     ~1.67    ~1.48    ~1.263   ~1.049
N       150  2.84     2.73     2.61     2.47     2.33     2.18     2.03     1.89     ~1.698   ~1.506   ~1.288   ~1.072
P       200  2.85     2.73     2.62     2.47     2.33     2.18     2.04     1.89     ~1.703   ~1.51    ~1.292   ~1.075
`
