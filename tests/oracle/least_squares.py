"""../published/least_squares.csv: certified fits of the NIST Statistical Reference Datasets (nonlinear regression)."""

NIST = "NIST Statistical Reference Datasets; nonlinear regression; certified values of the file"

# name: (model, starts, certified parameters, their standard deviations, residual sum of squares, residual sd, "y x; y x")
PROBLEMS = {
    "Misra1a": (
        "saturation",
        ((500, 1e-4), (250, 5e-4)),
        (2.3894212918e02, 5.5015643181e-04),
        (2.7070075241e00, 7.2668688436e-06),
        1.2455138894e-01,
        1.0187876330e-01,
        "10.07 77.6; 14.73 114.9; 17.94 141.1; 23.93 190.8; 29.61 239.9; 35.18 289.0; 40.02 332.8; 44.82 378.4; 50.76 434.8; "
        "55.05 477.3; 61.01 536.8; 66.40 593.1; 75.47 689.1; 81.78 760.0",
    ),
    "BoxBOD": (
        "saturation",
        ((1, 1), (100, 0.75)),
        (2.1380940889e02, 5.4723748542e-01),
        (1.2354515176e01, 1.0455993237e-01),
        1.1680088766e03,
        1.7088072423e01,
        "109 1; 149 2; 149 3; 191 5; 213 7; 224 10",
    ),
    "MGH09": (
        "quadratic over quadratic",
        ((25, 39, 41.5, 39), (0.25, 0.39, 0.415, 0.39)),
        (1.9280693458e-01, 1.9128232873e-01, 1.2305650693e-01, 1.3606233068e-01),
        (1.1435312227e-02, 1.9633220911e-01, 8.0842031232e-02, 9.0025542308e-02),
        3.0750560385e-04,
        6.6279236551e-03,
        "0.1957 4; 0.1947 2; 0.1735 1; 0.16 0.5; 0.0844 0.25; 0.0627 0.167; 0.0456 0.125; 0.0342 0.1; 0.0323 0.0833; "
        "0.0235 0.0714; 0.0246 0.0625",
    ),
    "Thurber": (
        "cubic over cubic",
        ((1000, 1000, 400, 40, 0.7, 0.3, 0.03), (1300, 1500, 500, 75, 1, 0.4, 0.05)),
        (1.2881396800e03, 1.4910792535e03, 5.8323836877e02, 7.5416644291e01, 9.6629502864e-01, 3.9797285797e-01, 4.9727297349e-02),
        (4.6647963344e00, 3.9571156086e01, 2.8698696102e01, 5.5675370270e00, 3.1333340687e-02, 1.4984928198e-02, 6.5842344623e-03),
        5.6427082397e03,
        1.3714600784e01,
        "80.574 -3.067; 84.248 -2.981; 87.264 -2.921; 87.195 -2.912; 89.076 -2.840; 89.608 -2.797; 89.868 -2.702; 90.101 -2.699; "
        "92.405 -2.633; 95.854 -2.481; 100.696 -2.363; 101.060 -2.322; 401.672 -1.501; 390.724 -1.460; 567.534 -1.274; "
        "635.316 -1.212; 733.054 -1.100; 759.087 -1.046; 894.206 -0.915; 990.785 -0.714; 1090.109 -0.566; 1080.914 -0.545; "
        "1122.643 -0.400; 1178.351 -0.309; 1260.531 -0.109; 1273.514 -0.103; 1288.339 0.010; 1327.543 0.119; 1353.863 0.377; "
        "1414.509 0.790; 1425.208 0.963; 1421.384 1.006; 1442.962 1.115; 1464.350 1.572; 1468.705 1.841; 1447.894 2.047; "
        "1457.628 2.200",
    ),
}


def joined(numbers):
    return ";".join(f"{number:.11g}" for number in numbers)


def least_squares(checked):
    inputs = ["case", "model", "start", "data_x_y"]
    outputs = ["parameters", "standard_deviations", "sum_of_squares", "residual_sd"]
    rows = []
    for name, (model, starts, parameters, deviations, sum_of_squares, residual_sd, data) in PROBLEMS.items():
        points = [pair.split() for pair in data.split(";")]
        for number, start in enumerate(starts, start=1):
            row = {
                "case": f"{name} from start {number}",
                "model": model,
                "start": joined(start),
                "data_x_y": ";".join(f"{x}:{y}" for y, x in points),
                "parameters": joined(parameters),
                "standard_deviations": joined(deviations),
                "sum_of_squares": f"{sum_of_squares:.11g}",
                "residual_sd": f"{residual_sd:.11g}",
            }
            rows.append(checked(row, f"{NIST} {name}.dat", 1e-8, "the certified values have eleven digits; standard deviations lose two or three"))
    return inputs, outputs, rows
