/*
 * CVODE and IDA of SUNDIALS behind JNI: variable-order BDF, direct sparse solver KLU, user Jacobian, root finding.
 * The problem stays in Java; every evaluation is a call back. One solver, one thread.
 */
#include <jni.h>
#include <stdlib.h>
#include <string.h>

#include <cvode/cvode.h>
#include <ida/ida.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_klu.h>
#include <sunmatrix/sunmatrix_sparse.h>

enum { CVODE_ODE = 0, IDA_DAE = 1 };

typedef struct {
    int kind, n, nnz, roots, fired;
    JNIEnv *env;
    jobject problem;
    jmethodID rates, jacobian, switching;
    jdoubleArray y, f, values, g;
    SUNContext context;
    void *memory;
    N_Vector state, slope, weights, id;
    SUNMatrix matrix;
    SUNLinearSolver linear;
    int *columnStart, *row, *diagonal;
    unsigned char *differential;
    int *found;
    double now;
} Solver;

/* Copies y out, asks Java for the rates, copies them in. */
static int rates(Solver *s, double t, const double *y, double *f) {
    JNIEnv *env = s->env;
    (*env)->SetDoubleArrayRegion(env, s->y, 0, s->n, y);
    jboolean good = (*env)->CallBooleanMethod(env, s->problem, s->rates, t);
    if ((*env)->ExceptionCheck(env)) return -1;
    if (!good) return 1;
    (*env)->GetDoubleArrayRegion(env, s->f, 0, s->n, f);
    return 0;
}

static int odeRates(realtype t, N_Vector y, N_Vector f, void *user) {
    return rates(user, t, N_VGetArrayPointer(y), N_VGetArrayPointer(f));
}

static int daeResidual(realtype t, N_Vector y, N_Vector slope, N_Vector residual, void *user) {
    Solver *s = user;
    double *r = N_VGetArrayPointer(residual), *dy = N_VGetArrayPointer(slope);
    int flag = rates(s, t, N_VGetArrayPointer(y), r);
    if (flag) return flag;
    for (int i = 0; i < s->n; i++) if (s->differential[i]) r[i] -= dy[i];
    return 0;
}

static int jacobian(Solver *s, double t, N_Vector y, SUNMatrix j) {
    JNIEnv *env = s->env;
    (*env)->SetDoubleArrayRegion(env, s->y, 0, s->n, N_VGetArrayPointer(y));
    jboolean good = (*env)->CallBooleanMethod(env, s->problem, s->jacobian, t);
    if ((*env)->ExceptionCheck(env)) return -1;
    if (!good) return 1;
    SUNMatZero(j);
    sunindextype *start = SUNSparseMatrix_IndexPointers(j), *row = SUNSparseMatrix_IndexValues(j);
    for (int i = 0; i <= s->n; i++) start[i] = s->columnStart[i];
    for (int p = 0; p < s->nnz; p++) row[p] = s->row[p];
    (*env)->GetDoubleArrayRegion(env, s->values, 0, s->nnz, SUNSparseMatrix_Data(j));
    return 0;
}

static int odeJacobian(realtype t, N_Vector y, N_Vector f, SUNMatrix j, void *user, N_Vector a, N_Vector b, N_Vector c) {
    (void)f, (void)a, (void)b, (void)c;
    return jacobian(user, t, y, j);
}

static int daeJacobian(realtype t, realtype cj, N_Vector y, N_Vector slope, N_Vector r, SUNMatrix j, void *user,
                       N_Vector a, N_Vector b, N_Vector c) {
    (void)slope, (void)r, (void)a, (void)b, (void)c;
    Solver *s = user;
    int flag = jacobian(s, t, y, j);
    if (flag) return flag;
    double *v = SUNSparseMatrix_Data(j);
    for (int i = 0; i < s->n; i++) if (s->differential[i]) v[s->diagonal[i]] -= cj;
    return 0;
}

static int switching(Solver *s, double t, N_Vector y, realtype *g) {
    JNIEnv *env = s->env;
    (*env)->SetDoubleArrayRegion(env, s->y, 0, s->n, N_VGetArrayPointer(y));
    (*env)->CallVoidMethod(env, s->problem, s->switching, t);
    if ((*env)->ExceptionCheck(env)) return -1;
    (*env)->GetDoubleArrayRegion(env, s->g, 0, s->roots, g);
    return 0;
}

static int odeSwitching(realtype t, N_Vector y, realtype *g, void *user) { return switching(user, t, y, g); }

static int daeSwitching(realtype t, N_Vector y, N_Vector slope, realtype *g, void *user) {
    (void)slope;
    return switching(user, t, y, g);
}

/* KLU need not order the matrix anew at every restart: its pattern stays. */
static int keepOrder(SUNLinearSolver linear) {
    (void)linear;
    return SUNLS_SUCCESS;
}

static void ignore(int code, const char *module, const char *function, char *message, void *user) {
    (void)code, (void)module, (void)function, (void)message, (void)user;
}

JNIEXPORT jlong JNICALL Java_stokewell_bench_Sundials_make(
        JNIEnv *env, jclass type, jint kind, jobject problem, jdoubleArray y, jdoubleArray f, jdoubleArray values,
        jdoubleArray g, jintArray columnStart, jintArray row, jintArray diagonal, jbooleanArray differential,
        jdouble relative, jdoubleArray absolute, jint order, jint ordering, jdouble convergence) {
    (void)type;
    Solver *s = calloc(1, sizeof *s);
    s->kind = kind;
    s->env = env;
    s->n = (*env)->GetArrayLength(env, y);
    s->nnz = (*env)->GetArrayLength(env, row);
    s->roots = (*env)->GetArrayLength(env, g);
    s->problem = (*env)->NewGlobalRef(env, problem);
    s->y = (*env)->NewGlobalRef(env, y);
    s->f = (*env)->NewGlobalRef(env, f);
    s->values = (*env)->NewGlobalRef(env, values);
    s->g = (*env)->NewGlobalRef(env, g);
    jclass c = (*env)->GetObjectClass(env, problem);
    s->rates = (*env)->GetMethodID(env, c, "rates", "(D)Z");
    s->jacobian = (*env)->GetMethodID(env, c, "jacobian", "(D)Z");
    s->switching = (*env)->GetMethodID(env, c, "switching", "(D)V");
    s->columnStart = malloc((s->n + 1) * sizeof(int));
    s->row = malloc(s->nnz * sizeof(int));
    s->diagonal = malloc(s->n * sizeof(int));
    s->differential = malloc(s->n);
    s->found = calloc(s->roots + 1, sizeof(int));
    (*env)->GetIntArrayRegion(env, columnStart, 0, s->n + 1, s->columnStart);
    (*env)->GetIntArrayRegion(env, row, 0, s->nnz, s->row);
    (*env)->GetIntArrayRegion(env, diagonal, 0, s->n, s->diagonal);
    (*env)->GetBooleanArrayRegion(env, differential, 0, s->n, s->differential);
    SUNContext_Create(NULL, &s->context);
    s->state = N_VNew_Serial(s->n, s->context);
    s->slope = N_VNew_Serial(s->n, s->context);
    s->weights = N_VNew_Serial(s->n, s->context);
    s->id = N_VNew_Serial(s->n, s->context);
    (*env)->GetDoubleArrayRegion(env, y, 0, s->n, N_VGetArrayPointer(s->state));
    (*env)->GetDoubleArrayRegion(env, absolute, 0, s->n, N_VGetArrayPointer(s->weights));
    N_VConst(0, s->slope);
    for (int i = 0; i < s->n; i++) N_VGetArrayPointer(s->id)[i] = s->differential[i] ? 1 : 0;
    s->matrix = SUNSparseMatrix(s->n, s->n, s->nnz, CSC_MAT, s->context);
    s->linear = SUNLinSol_KLU(s->state, s->matrix, s->context);
    SUNLinSol_KLUSetOrdering(s->linear, ordering);
    int dir = 1, *direction = malloc((s->roots + 1) * sizeof(int));
    for (int i = 0; i < s->roots; i++) direction[i] = dir;
    int bad = 0;
    if (kind == CVODE_ODE) {
        s->memory = CVodeCreate(CV_BDF, s->context);
        bad |= CVodeInit(s->memory, odeRates, 0, s->state);
        bad |= CVodeSVtolerances(s->memory, relative, s->weights);
        bad |= CVodeSetUserData(s->memory, s);
        bad |= CVodeSetErrHandlerFn(s->memory, ignore, NULL);
        bad |= CVodeSetMaxOrd(s->memory, order);
        if (convergence > 0) bad |= CVodeSetNonlinConvCoef(s->memory, convergence);
        bad |= CVodeSetMaxNumSteps(s->memory, 10000000);
        bad |= CVodeSetLinearSolver(s->memory, s->linear, s->matrix);
        bad |= CVodeSetJacFn(s->memory, odeJacobian);
        if (s->roots) bad |= CVodeRootInit(s->memory, s->roots, odeSwitching);
        if (s->roots) bad |= CVodeSetRootDirection(s->memory, direction);
        bad |= CVodeSetNoInactiveRootWarn(s->memory);
    } else {
        s->memory = IDACreate(s->context);
        bad |= IDAInit(s->memory, daeResidual, 0, s->state, s->slope);
        bad |= IDASVtolerances(s->memory, relative, s->weights);
        bad |= IDASetUserData(s->memory, s);
        bad |= IDASetErrHandlerFn(s->memory, ignore, NULL);
        bad |= IDASetMaxOrd(s->memory, order);
        if (convergence > 0) bad |= IDASetNonlinConvCoef(s->memory, convergence);
        bad |= IDASetMaxNumSteps(s->memory, 10000000);
        bad |= IDASetId(s->memory, s->id);
        bad |= IDASetLinearSolver(s->memory, s->linear, s->matrix);
        bad |= IDASetJacFn(s->memory, daeJacobian);
        if (s->roots) bad |= IDARootInit(s->memory, s->roots, daeSwitching);
        if (s->roots) bad |= IDASetRootDirection(s->memory, direction);
        bad |= IDASetNoInactiveRootWarn(s->memory);
    }
    free(direction);
    SUNLinSolInitialize(s->linear);
    s->linear->ops->initialize = keepOrder;
    return bad ? 0 : (jlong)s;
}

/* Starts anew at t from the problem's y (and, for a DAE, slopes in f). */
JNIEXPORT jint JNICALL Java_stokewell_bench_Sundials_restart(JNIEnv *env, jclass type, jlong handle, jdouble t) {
    (void)type;
    Solver *s = (Solver *)handle;
    s->env = env;
    s->now = t;
    (*env)->GetDoubleArrayRegion(env, s->y, 0, s->n, N_VGetArrayPointer(s->state));
    if (s->kind == CVODE_ODE) return CVodeReInit(s->memory, t, s->state);
    double *dy = N_VGetArrayPointer(s->slope);
    (*env)->GetDoubleArrayRegion(env, s->f, 0, s->n, dy);
    for (int i = 0; i < s->n; i++) if (!s->differential[i]) dy[i] = 0;
    return IDAReInit(s->memory, t, s->state, s->slope);
}

/* Goes on to until, never past stop; 0 there, 2 at a root, below 0 on failure. The state is left in the problem's y. */
JNIEXPORT jint JNICALL Java_stokewell_bench_Sundials_advance(
        JNIEnv *env, jclass type, jlong handle, jdouble until, jdouble stop) {
    (void)type;
    Solver *s = (Solver *)handle;
    s->env = env;
    int flag;
    if (s->kind == CVODE_ODE) {
        CVodeSetStopTime(s->memory, stop);
        flag = CVode(s->memory, until, s->state, &s->now, CV_NORMAL);
        if (flag == CV_ROOT_RETURN) CVodeGetRootInfo(s->memory, s->found);
    } else {
        IDASetStopTime(s->memory, stop);
        flag = IDASolve(s->memory, until, &s->now, s->state, s->slope, IDA_NORMAL);
        if (flag == IDA_ROOT_RETURN) IDAGetRootInfo(s->memory, s->found);
    }
    (*env)->SetDoubleArrayRegion(env, s->y, 0, s->n, N_VGetArrayPointer(s->state));
    s->fired = -1;
    if (flag == CV_ROOT_RETURN) for (int i = s->roots - 1; i >= 0; i--) if (s->found[i] > 0) s->fired = i;
    return flag < 0 ? flag : flag == CV_ROOT_RETURN ? 2 : 0;
}

JNIEXPORT jdouble JNICALL Java_stokewell_bench_Sundials_time(JNIEnv *env, jclass type, jlong handle) {
    (void)env, (void)type;
    return ((Solver *)handle)->now;
}

JNIEXPORT jint JNICALL Java_stokewell_bench_Sundials_fired(JNIEnv *env, jclass type, jlong handle) {
    (void)env, (void)type;
    return ((Solver *)handle)->fired;
}

/* Adds what has been done since the last restart: steps, error fails, setups (factorisations), iterations, convergence fails. */
JNIEXPORT void JNICALL Java_stokewell_bench_Sundials_count(JNIEnv *env, jclass type, jlong handle, jlongArray sums) {
    (void)type;
    Solver *s = (Solver *)handle;
    long steps = 0, fails = 0, setups = 0, iterations = 0, convergence = 0;
    if (s->kind == CVODE_ODE) {
        CVodeGetNumSteps(s->memory, &steps);
        CVodeGetNumErrTestFails(s->memory, &fails);
        CVodeGetNumLinSolvSetups(s->memory, &setups);
        CVodeGetNumNonlinSolvIters(s->memory, &iterations);
        CVodeGetNumNonlinSolvConvFails(s->memory, &convergence);
    } else {
        IDAGetNumSteps(s->memory, &steps);
        IDAGetNumErrTestFails(s->memory, &fails);
        IDAGetNumLinSolvSetups(s->memory, &setups);
        IDAGetNumNonlinSolvIters(s->memory, &iterations);
        IDAGetNumNonlinSolvConvFails(s->memory, &convergence);
    }
    jlong v[5];
    (*env)->GetLongArrayRegion(env, sums, 0, 5, v);
    v[0] += steps, v[1] += fails, v[2] += setups, v[3] += iterations, v[4] += convergence;
    (*env)->SetLongArrayRegion(env, sums, 0, 5, v);
}

/* Crosses over and back as an evaluation does, copies and all, so that the crossing alone can be timed. */
JNIEXPORT void JNICALL Java_stokewell_bench_Sundials_cross(
        JNIEnv *env, jclass type, jlong handle, jint times, jboolean whole) {
    (void)type;
    Solver *s = (Solver *)handle;
    s->env = env;
    double *f = malloc((s->n + s->nnz) * sizeof(double));
    for (int i = 0; i < times; i++) {
        (*env)->SetDoubleArrayRegion(env, s->y, 0, s->n, N_VGetArrayPointer(s->state));
        (*env)->CallBooleanMethod(env, s->problem, s->rates, 0.0);
        if (whole) (*env)->GetDoubleArrayRegion(env, s->values, 0, s->nnz, f);
        else (*env)->GetDoubleArrayRegion(env, s->f, 0, s->n, f);
    }
    free(f);
}

JNIEXPORT void JNICALL Java_stokewell_bench_Sundials_drop(JNIEnv *env, jclass type, jlong handle) {
    (void)type;
    Solver *s = (Solver *)handle;
    if (s->kind == CVODE_ODE) CVodeFree(&s->memory);
    else IDAFree(&s->memory);
    SUNLinSolFree(s->linear);
    SUNMatDestroy(s->matrix);
    N_VDestroy(s->state), N_VDestroy(s->slope), N_VDestroy(s->weights), N_VDestroy(s->id);
    SUNContext_Free(&s->context);
    (*env)->DeleteGlobalRef(env, s->problem);
    (*env)->DeleteGlobalRef(env, s->y);
    (*env)->DeleteGlobalRef(env, s->f);
    (*env)->DeleteGlobalRef(env, s->values);
    (*env)->DeleteGlobalRef(env, s->g);
    free(s->columnStart), free(s->row), free(s->diagonal), free(s->differential), free(s->found), free(s);
}
